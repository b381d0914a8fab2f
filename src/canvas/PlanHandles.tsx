/**
 * Handles of the plan: gas flow and blade arrows at the edges they come from, grips of the zone lines, the turn handle
 * of the selection, corners of the drawn zone that is chosen. Degrees counter-clockwise from +x, millimetres on the platform.
 */
import { t, type Text } from '../language/index';
import { formatField } from '../units/format';
import { Suspense, type PointerEvent } from 'react';
import { onceDrawn } from './later';
import { setZoneLine } from '../commands/operations/zoneLines';
import { changeZones } from '../store/shown';
import { zoneLines } from '../zoning/lines';
import type { ZoneLine } from '../zoning/types';
import { useAnalysis, useBench, useWorkbench } from './bench';
import type { Size } from './camera';
import { lineGesture } from './gestures/edits';
import type { Gesture, Input, PlanHost } from './gestures/gesture';
import { setStream, streamDirection, streamGesture, streamStep, type Stream } from './gestures/streams';
import { Handle } from './Handle';
import { divisionAt } from './layerAt';
import { gripPlaces, streamPlace, streamTagSide } from './plan/places';
import type { Modifiers } from './snapping';
import { useCamera } from './viewport';

const TurnHandle = onceDrawn(async () => (await import('./TurnHandle')).default);
const ZoneHandles = onceDrawn(async () => (await import('./ZoneHandles')).default);

export interface HandlesProps {
  readonly host: PlanHost;
  readonly size: Size;
  /** Begins a gesture at a press on a handle. */
  readonly onPress: (event: PointerEvent, begin: (start: Input) => Gesture) => void;
}

const STREAM_WORDS: Readonly<Record<Stream, { label: Text; tag: Text; history: Text }>> = {
  gas: { label: 'Gas flow, direction', tag: 'GAS', history: 'Turn the gas flow' },
  blade: { label: 'Blade, direction', tag: 'BLADE', history: 'Turn the blade' },
};

function StreamArrow({ stream }: { stream: Stream }) {
  return (
    <>
      {stream === 'gas' ? (
        <path d="M-13 -5H4M-13 0H7M-13 5H4" />
      ) : (
        <path d="M-10 -11V11M-10 0H7" className="handle-thick" />
      )}
      <path d="M13 0L4 -5V5Z" className="handle-head" />
    </>
  );
}

function StreamHandle({ stream, host, size, onPress }: HandlesProps & { stream: Stream }) {
  const bench = useWorkbench();
  const camera = useCamera();
  const towards = useBench((state) => streamDirection(state.layout, stream));
  const platform = useBench((state) => state.layout.machine.platform);
  const rad = (towards * Math.PI) / 180;
  // Seen along the stream, gas stands on one hand and blade on the other; the side is chosen so that from the rear
  // and the front gas stands right of the middle.
  const right = Math.sin(rad) > 0.5 || Math.cos(rad) > 0.5 ? 1 : -1;
  const side = ((stream === 'gas' ? 1 : -1) * right) as 1 | -1;
  const at = streamPlace(towards, side, platform, camera, size);
  const words = STREAM_WORDS[stream];
  const turn = (arrow: { x: number; y: number }, held: Modifiers) => {
    const by = (arrow.x + arrow.y) * streamStep(stream, held);
    bench.change(t(words.history), (layout) =>
      setStream(layout, stream, streamDirection(layout, stream) + by),
    );
  };
  return (
    <Handle
      at={at}
      label={t(words.label)}
      value={towards}
      least={0}
      most={360}
      valueText={t('towards {towards}°', { towards })}
      className="handle-stream"
      testId={`${stream}-arrow`}
      cursor="grab"
      history={t(words.history)}
      onPress={(event) => onPress(event, (start) => streamGesture(host, start, stream))}
      onArrow={turn}
    >
      <svg viewBox="-18 -18 36 36" aria-hidden="true">
        <g transform={`rotate(${-towards})`}>
          <StreamArrow stream={stream} />
        </g>
      </svg>
      <span className={`stream-tag ${streamTagSide(towards, side)}`}>{t(words.tag)}</span>
    </Handle>
  );
}

const lineTitle = (line: ZoneLine): string => {
  if (line.key.kind === 'strip') return t('Zone line {number}', { number: line.key.index + 1 });
  return line.key.kind === 'quadrantX' ? t('Zone line left to right') : t('Zone line front to back');
};
const lineId = ({ key }: ZoneLine): string => (key.kind === 'strip' ? `strip-${key.index}` : key.kind);
const stepOf = (held: Modifiers): number => (held.shift ? 10 : held.ctrl ? 0.1 : 1);

function LineGrips({ line, index, host, size, onPress }: HandlesProps & { line: ZoneLine; index: number }) {
  const bench = useWorkbench();
  const active = useBench((state) => state.view.activeLine === index);
  const choose = () => bench.setView({ activeLine: index });
  const camera = useCamera();
  const platform = useBench((state) => state.layout.machine.platform);
  const places = gripPlaces(line, platform, camera, size);
  const half = (platform.width_mm * Math.abs(line.nx) + platform.depth_mm * Math.abs(line.ny)) / 2;
  const move = (arrow: { x: number; y: number }, held: Modifiers) => {
    const by = (arrow.x * (Math.sign(line.nx) || 1) + arrow.y * (Math.sign(line.ny) || 1)) * stepOf(held);
    changeZones(bench, t('Move a zone line'), (plate) => {
      const present = zoneLines(plate.zoning).find((other) => lineId(other) === lineId(line));
      return setZoneLine(plate, line.key, (present?.c ?? line.c) + by);
    });
  };
  const angle = (Math.atan2(-line.nx, -line.ny) * 180) / Math.PI;
  return places?.map((at, end) => (
    <Handle
      key={end === 0 ? 'front' : 'rear'}
      at={at}
      label={lineTitle(line)}
      value={line.c}
      least={-half}
      most={half}
      valueText={`${formatField(line.c)} mm`}
      className={active ? 'handle-active' : ''}
      testId={`line-${lineId(line)}${end === 0 ? '' : '-rear'}`}
      cursor={Math.abs(line.nx) > Math.abs(line.ny) ? 'col-resize' : 'row-resize'}
      reachable={end === 0}
      history={t('Move a zone line')}
      onPress={(event) => {
        choose();
        onPress(event, (start) => lineGesture(host, start, [line]));
      }}
      onFocus={choose}
      onArrow={move}
    >
      <svg viewBox="-12 -12 24 24" aria-hidden="true">
        <path d="M0 -8L5 0L0 8L-5 0Z" transform={`rotate(${angle})`} className="handle-diamond" />
      </svg>
    </Handle>
  ));
}

/** All handles that the present tool offers. */
export function PlanHandles(props: HandlesProps) {
  const analysis = useAnalysis();
  const height_mm = useBench((state) => state.view.height_mm);
  const { lines } = divisionAt(analysis, height_mm);
  const tool = useBench((state) => state.view.tool);
  const partChosen = useBench((state) => state.view.selection.some((id) => !state.view.locked.includes(id)));
  const zoneChosen = useBench((state) => state.view.activeZone !== null);
  return (
    <>
      <StreamHandle stream="gas" {...props} />
      <StreamHandle stream="blade" {...props} />
      {lines.map((line, index) => (
        <LineGrips key={lineId(line)} line={line} index={index} {...props} />
      ))}
      {tool === 'select' && (
        <Suspense fallback={null}>
          {zoneChosen && <ZoneHandles {...props} />}
          {partChosen && <TurnHandle {...props} />}
        </Suspense>
      )}
    </>
  );
}
