/**
 * Handles of the drawn zone that is chosen: its middle moves it, a square at each corner moves that, a cross on each
 * side pulls out a new corner, a square on a circle changes its radius. With the keyboard: arrows move (Ctrl: 0.1 mm,
 * Shift: 10 mm), Delete takes a corner away, Insert adds one on the side that follows. Platform mm, screen px.
 */
import { t } from '../language/index';
import { formatField } from '../units/format';
import { useRef, type PointerEvent, type ReactNode } from 'react';
import {
  addZoneCorner,
  cornersTogether,
  drawnZones,
  moveDrawnZone,
  moveZoneCorners,
  removeZoneCorner,
  setZoneRadius,
  type ZoneCorner,
} from '../commands/operations/drawnZones';
import { changeZones, plateOf, plateShown } from '../store/shown';
import type { DrawnZone, LayoutRing, Outline, Point } from '../layout/types';
import type { PlatePoint, ScreenPoint } from '../units/types';
import { useBench, useWorkbench } from './bench';
import { toScreen, type Size } from './camera';
import { cornerGesture, moveZoneGesture, newCornerGesture, radiusGesture } from './gestures/zones';
import type { Gesture, Input, PlanHost } from './gestures/gesture';
import { Handle } from './Handle';
import type { Modifiers } from './snapping';
import { useCamera } from './viewport';

interface ZoneHandlesProps {
  readonly host: PlanHost;
  readonly size: Size;
  readonly onPress: (event: PointerEvent, begin: (start: Input) => Gesture) => void;
}
interface RingProps extends ZoneHandlesProps {
  readonly zone: number;
  readonly ring: number;
}

/** More corners than this are not meant for a hand. */
const MOST_HANDLES = 60;
/** Sides shorter than this on screen have no cross: it would cover their corners. */
const LEAST_SIDE_PX = 56;

const stepOf = (held: Modifiers): number => (held.shift ? 10 : held.ctrl ? 0.1 : 1);
const halfway = (a: Point, b: Point): Point => [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
const plate = ([x, y]: Point): PlatePoint => ({ x, y });

function useScreen(size: Size): (p: Point) => ScreenPoint {
  const camera = useCamera();
  return (p) => toScreen(plate(p), camera, size);
}

/** What all handles of a zone have in common. */
function ZoneHandle(props: {
  readonly at: ScreenPoint;
  readonly place: Point;
  readonly label: string;
  readonly testId: string;
  readonly history: string;
  readonly cursor: string;
  readonly reachable?: boolean;
  readonly onPress: (event: PointerEvent) => void;
  readonly onArrow: (arrow: { readonly x: number; readonly y: number }, held: Modifiers) => void;
  readonly onKey?: (key: string) => boolean;
  readonly onLetGo?: () => void;
  readonly children: ReactNode;
}) {
  const { platform } = useBench((state) => state.layout.machine);
  const [x, y] = props.place;
  return (
    <Handle
      {...props}
      value={x}
      least={-platform.width_mm / 2}
      most={platform.width_mm / 2}
      valueText={`x ${formatField(x)} mm, y ${formatField(y)} mm`}
      className="handle-zone"
    >
      <svg viewBox="-12 -12 24 24" aria-hidden="true">
        {props.children}
      </svg>
    </Handle>
  );
}

function Corner({ place, outline, host, size, onPress }: ZoneHandlesProps & CornerProps) {
  const bench = useWorkbench();
  const screen = useScreen(size);
  const here = outline[place.corner]!;
  const history = t('Reshape zone {number}', { number: place.zone + 1 });
  // As long as a key is held: a corner that is passed on the way is not taken along.
  const together = useRef<readonly ZoneCorner[] | null>(null);
  return (
    <ZoneHandle
      at={screen(here)}
      place={here}
      label={t('Zone {number}, corner {corner}', { number: place.zone + 1, corner: place.corner + 1 })}
      testId={`zone-corner-${place.ring}-${place.corner}`}
      history={history}
      cursor="move"
      onPress={(event) => onPress(event, (start) => cornerGesture(host, start, place))}
      onArrow={({ x, y }, held) => {
        const step = stepOf(held);
        together.current ??= cornersTogether(plateOf(bench), place);
        const places = together.current;
        changeZones(bench, history, (plate) =>
          moveZoneCorners(plate, places, [here[0] + x * step, here[1] + y * step]),
        );
      }}
      onLetGo={() => {
        together.current = null;
      }}
      onKey={(key) => {
        const next = outline[(place.corner + 1) % outline.length]!;
        if (key === 'Delete' || key === 'Backspace')
          changeZones(bench, history, (plate) => removeZoneCorner(plate, place));
        else if (key === 'Insert')
          changeZones(bench, history, (plate) => addZoneCorner(plate, place, halfway(here, next)));
        else return false;
        return true;
      }}
    >
      <path d="M-4.5 -4.5H4.5V4.5H-4.5Z" className="handle-diamond" />
    </ZoneHandle>
  );
}
interface CornerProps {
  readonly place: ZoneCorner;
  readonly outline: Outline;
}

function Side({ place, outline, host, size, onPress }: ZoneHandlesProps & CornerProps) {
  const screen = useScreen(size);
  const [from, to] = [outline[place.corner]!, outline[(place.corner + 1) % outline.length]!];
  const [a, b] = [screen(from), screen(to)];
  if (Math.hypot(a.left - b.left, a.top - b.top) < LEAST_SIDE_PX) return null;
  const middle = halfway(from, to);
  return (
    <ZoneHandle
      at={screen(middle)}
      place={middle}
      label={t('Zone {number}, new corner after corner {corner}', {
        number: place.zone + 1,
        corner: place.corner + 1,
      })}
      testId={`zone-side-${place.ring}-${place.corner}`}
      history={t('Reshape zone {number}', { number: place.zone + 1 })}
      cursor="copy"
      reachable={false}
      onPress={(event) => onPress(event, (start) => newCornerGesture(host, start, place))}
      onArrow={() => undefined}
    >
      <circle r="6" />
      <path d="M-3.5 0H3.5M0 -3.5V3.5" />
    </ZoneHandle>
  );
}

function Radius({ zone, ring, circle, host, size, onPress }: RingProps & CircleProps) {
  const bench = useWorkbench();
  const screen = useScreen(size);
  const [x, y, r] = circle;
  const history = t('Reshape zone {number}', { number: zone + 1 });
  return (
    <ZoneHandle
      at={screen([x + r, y])}
      place={[x + r, y]}
      label={t('Zone {number}, radius', { number: zone + 1 })}
      testId={`zone-radius-${ring}`}
      history={history}
      cursor="col-resize"
      onPress={(event) => onPress(event, (start) => radiusGesture(host, start, zone, ring))}
      onArrow={(arrow, held) =>
        changeZones(bench, history, (plate) =>
          setZoneRadius(plate, zone, ring, r + (arrow.x + arrow.y) * stepOf(held)),
        )
      }
    >
      <path d="M-4.5 -4.5H4.5V4.5H-4.5Z" className="handle-diamond" />
    </ZoneHandle>
  );
}
interface CircleProps {
  readonly circle: readonly [number, number, number];
}

function RingHandles({ outline, ...props }: RingProps & { readonly outline: LayoutRing }) {
  if ('circle_mm' in outline) return <Radius {...props} circle={outline.circle_mm} />;
  if (outline.length > MOST_HANDLES) return null;
  return outline.map((_, corner) => {
    const place = { zone: props.zone, ring: props.ring, corner };
    return [
      <Side key={`side ${corner}`} {...props} place={place} outline={outline} />,
      <Corner key={`corner ${corner}`} {...props} place={place} outline={outline} />,
    ];
  });
}

const middleOf = (ring: LayoutRing): Point => {
  if ('circle_mm' in ring) return [ring.circle_mm[0], ring.circle_mm[1]];
  const [xs, ys] = [ring.map(([x]) => x), ring.map(([, y]) => y)];
  const middle = (values: readonly number[]) => (Math.min(...values) + Math.max(...values)) / 2;
  return [middle(xs), middle(ys)];
};

function Middle({ zone, shape, host, size, onPress }: MiddleProps) {
  const bench = useWorkbench();
  const screen = useScreen(size);
  const middle = middleOf(shape.rings[0]!);
  const history = t('Move zone {number}', { number: zone + 1 });
  return (
    <ZoneHandle
      at={screen(middle)}
      place={middle}
      label={history}
      testId="zone-middle"
      history={history}
      cursor="move"
      onPress={(event) => onPress(event, (start) => moveZoneGesture(host, start, zone))}
      onArrow={({ x, y }, held) => {
        const step = stepOf(held);
        changeZones(bench, history, (plate) => moveDrawnZone(plate, zone, x * step, y * step));
      }}
    >
      <circle r="10" />
      <path d="M-7 0H7M0 -7V7M-7 0L-4.5 -2M-7 0L-4.5 2M7 0L4.5 -2M7 0L4.5 2M0 -7L-2 -4.5M0 -7L2 -4.5M0 7L-2 4.5M0 7L2 4.5" />
    </ZoneHandle>
  );
}
interface MiddleProps extends ZoneHandlesProps {
  readonly zone: number;
  readonly shape: DrawnZone;
}

function Outlines({ shape, size }: { readonly shape: DrawnZone; readonly size: Size }) {
  const screen = useScreen(size);
  const { pxPerMm } = useCamera();
  return (
    <svg className="zone-outline" aria-hidden="true">
      {shape.rings.map((ring, i) => {
        if (!('circle_mm' in ring)) {
          const points = ring.map((p) => `${screen(p).left},${screen(p).top}`).join(' ');
          return <polygon key={i} points={points} />;
        }
        const { left, top } = screen([ring.circle_mm[0], ring.circle_mm[1]]);
        return <circle key={i} cx={left} cy={top} r={ring.circle_mm[2] * pxPerMm} />;
      })}
    </svg>
  );
}

/** Nothing while no drawn zone is chosen. */
export default function ZoneHandles(props: ZoneHandlesProps) {
  const zone = useBench((state) => state.view.activeZone);
  const shape = useBench((state) => (zone === null ? undefined : drawnZones(plateShown(state))[zone]));
  if (zone === null || !shape) return null;
  return (
    <>
      <Outlines shape={shape} size={props.size} />
      <Middle {...props} zone={zone} shape={shape} />
      {shape.rings.map((outline, ring) => (
        <RingHandles key={ring} {...props} zone={zone} ring={ring} outline={outline} />
      ))}
    </>
  );
}
