/**
 * The elevation: parts from the front. x is the plan's own axis (same camera), z goes upward and is shared with the
 * time per layer. Stretches of equal sections are marked by thin lines, changes of zones by wide dashed ones; the full
 * line across is the height the plan is cut at. Millimetres.
 */
import { t } from '../language/index';
import { memo, useMemo, useRef, type PointerEvent } from 'react';
import type { Analysis, Stretch } from '../build/types';
import type { PartId } from '../layout/types';
import { isSelected } from '../store/selected';
import type { Mm, Px } from '../units/types';
import type { Size } from './camera';
import { useAnalysisLater, useBench, useWorkbench } from './bench';
import './elevation.css';
import { faultNumbers } from './draw/overlay';
import { HeightHandle, setHeightAt } from './HeightLine';
import { tickLabel, ticks } from '../export/plan/ruler';
import { StepHandles, StepLines, StepNames } from './StepHandles';
import { covers, namePlace, silhouettes, type Block, type Silhouette } from './silhouettes';
import { useCamera, useSize } from './viewport';
import { WorstBand } from './WorstBand';
import { Z_LEFT_PX, zAxis, type ZAxis } from './zAxis';

const LABEL_LEAST_PX = 24;

interface Frame {
  readonly axis: ZAxis;
  readonly width: number;
  /** Along x. */
  readonly pxPerMm: number;
  toX(x: number): number;
}

/** Scales that differ by less than this look the same. */
const SAME_SCALE = 0.02;

function ZRuler({ axis, pxPerMm }: { axis: ZAxis; pxPerMm: number }) {
  const toScale = Math.abs(axis.pxPerMm / pxPerMm - 1) < SAME_SCALE;
  return (
    <g className="elev-ruler">
      <line x1={Z_LEFT_PX} x2={Z_LEFT_PX} y1={axis.toPx(axis.top_mm)} y2={axis.toPx(0)} />
      {ticks(0, axis.top_mm, axis.pxPerMm, 28).map(({ value, major }) => (
        <g key={value}>
          <line x1={Z_LEFT_PX - (major ? 8 : 4)} x2={Z_LEFT_PX} y1={axis.toPx(value)} y2={axis.toPx(value)} />
          {major && (
            <text x={Z_LEFT_PX - 10} y={axis.toPx(value) + 4} textAnchor="end">
              {tickLabel(value)}
            </text>
          )}
        </g>
      ))}
      <text x={4} y={11}>
        {toScale ? 'z mm' : t('z mm, not to the scale of x')}
      </text>
    </g>
  );
}

/** Lines nearer than this would be a hatching, not lines. */
const LEAST_GAP_PX = 5;

/** The stretches whose ends can be told apart; none where most of them cannot. */
function told(stretches: readonly Stretch[], axis: ZAxis): readonly Stretch[] {
  const apart = stretches.filter(({ from_mm, to_mm }) => (to_mm - from_mm) * axis.pxPerMm >= LEAST_GAP_PX);
  return apart.length >= stretches.length / 2 ? apart : [];
}

function Stretches({ stretches, frame }: { stretches: readonly Stretch[]; frame: Frame }) {
  return (
    <g className="elev-stretches">
      {told(stretches, frame.axis).map((stretch) => {
        const y = frame.axis.toPx(Math.min(stretch.to_mm, frame.axis.top_mm));
        return <line key={stretch.firstLayer} x1={Z_LEFT_PX} x2={frame.width} y1={y} y2={y} />;
      })}
    </g>
  );
}

interface PartProps {
  readonly silhouette: Silhouette;
  readonly frame: Frame;
  readonly state: string;
}

const PartFront = memo(({ silhouette, frame, state }: PartProps) => {
  const bench = useWorkbench();
  const { id } = silhouette;
  const light = (on: boolean) => bench.setView({ hover: on ? { kind: 'part', part: id } : null });
  const choose = (event: PointerEvent) => {
    if (event.button !== 0) return;
    const { selection } = bench.store.getState().view;
    const others = selection.filter((other) => other !== id);
    const added = others.length < selection.length ? others : [...selection, id];
    bench.setView({ selection: event.shiftKey ? added : [id] });
  };
  return (
    <g
      className={`elev-part ${state}`}
      onPointerEnter={() => light(true)}
      onPointerLeave={() => light(false)}
      onPointerDown={choose}
    >
      {silhouette.inRows ? (
        <Rows silhouette={silhouette} frame={frame} />
      ) : (
        <Slabs silhouette={silhouette} frame={frame} />
      )}
    </g>
  );
});

type BlocksProps = Pick<PartProps, 'silhouette' | 'frame'>;

const boxOfBlock = (block: Block, { axis, pxPerMm, toX }: Frame) => ({
  x: toX(block.left_mm),
  y: axis.toPx(block.to_mm),
  width: Math.max(0.5, (block.right_mm - block.left_mm) * pxPerMm),
  height: Math.max(0.5, (block.to_mm - block.from_mm) * axis.pxPerMm),
});

/** Every slab with its own outline. */
const Slabs = ({ silhouette, frame }: BlocksProps) =>
  silhouette.blocks.map((block) => (
    <rect key={`${block.from_mm} ${block.left_mm}`} {...boxOfBlock(block, frame)} />
  ));

/** Rows too thin to be told apart: one outline around all of them. */
function Rows({ silhouette, frame }: BlocksProps) {
  const path = silhouette.blocks
    .map((block) => boxOfBlock(block, frame))
    .map(({ x, y, width, height }) => `M${x} ${y}h${width}v${height + 0.5}h${-width}z`)
    .join('');
  return (
    <>
      <path className="elev-edge" d={path} />
      <path className="elev-body" d={path} />
    </>
  );
}

interface Shown {
  readonly silhouette: Silhouette;
  readonly state: string;
}

/** Names of parts whose top is in sight and wide enough; a lit part always has its name. */
function Names({ fronts, frame }: { fronts: readonly Shown[]; frame: Frame }) {
  return fronts.map(({ silhouette, state }, i) => {
    const { id, height_mm } = silhouette;
    const place = namePlace(silhouette, LABEL_LEAST_PX / frame.pxPerMm, LABEL_LEAST_PX / frame.axis.pxPerMm);
    const hidden = place && fronts.slice(i + 1).some((other) => covers(other.silhouette, place));
    if (!place || ((place.narrow || hidden) && !state.includes('elev-lit'))) return null;
    return (
      <text
        key={id}
        className="elev-name"
        x={frame.toX(place.x)}
        y={frame.axis.toPx(height_mm) + 13}
        textAnchor="middle"
      >
        {id}
      </text>
    );
  });
}

function useStates(analysis: Analysis): (id: PartId) => string {
  const selection = useBench((state) => state.view.selection);
  const hover = useBench((state) => state.view.hover);
  const faulty = useMemo(() => faultNumbers(analysis), [analysis]);
  return (id) =>
    [
      faulty.has(id) ? 'elev-faulty' : '',
      isSelected(selection, id) ? 'elev-selected' : '',
      hover?.kind === 'part' && hover.part === id ? 'elev-lit' : '',
      hover?.kind === 'problem' && analysis.problems[hover.problem]?.parts.includes(id) ? 'elev-lit' : '',
    ].join(' ');
}

/** Stacking by state, so that what is selected or lit is never hidden behind its neighbours. */
const rank = (state: string): number =>
  state.includes('elev-lit') ? 2 : state.includes('elev-selected') ? 1 : 0;

/** The scales of the drawing: x as the plan has it, z over the build. */
function useFrame(top_mm: Mm, size: Size): Frame {
  const camera = useCamera();
  const axis = useMemo(() => zAxis(top_mm, size.height), [top_mm, size.height]);
  return useMemo(
    (): Frame => ({
      axis,
      width: size.width,
      pxPerMm: camera.pxPerMm,
      toX: (x) => size.width / 2 + (x - camera.centreX_mm) * camera.pxPerMm,
    }),
    [axis, size.width, camera.centreX_mm, camera.pxPerMm],
  );
}

/** The platform's front edge, below all parts. */
function PlatformFront({ width_mm, frame }: { width_mm: Mm; frame: Frame }) {
  const base = frame.axis.toPx(0);
  const [left, right] = [frame.toX(-width_mm / 2), frame.toX(width_mm / 2)];
  return (
    <>
      <rect className="elev-platform" x={left} y={base} width={Math.max(0, right - left)} height={4} />
      <text x={Math.max(Z_LEFT_PX + 4, left)} y={base + 18}>
        {t('platform, seen from the front')}
      </text>
    </>
  );
}

/** The drawing itself, from what lies behind to what stands before it. */
function Front({ analysis, frame, height }: { analysis: Analysis; frame: Frame; height: Px }) {
  const stateOf = useStates(analysis);
  const { axis, width } = frame;
  const fronts = silhouettes(analysis.layout)
    .map((silhouette) => ({ silhouette, state: stateOf(silhouette.id) }))
    .sort((a, b) => rank(a.state) - rank(b.state));
  return (
    <svg width={width} height={height} role="img" aria-label={t('Parts from the front')}>
      <WorstBand axis={axis} left={Z_LEFT_PX} right={width} />
      <Stretches stretches={analysis.stretches} frame={frame} />
      {fronts.map(({ silhouette, state }) => (
        <PartFront key={silhouette.id} silhouette={silhouette} frame={frame} state={state} />
      ))}
      <Names fronts={fronts} frame={frame} />
      <StepLines axis={axis} left={Z_LEFT_PX} right={width} />
      <StepNames axis={axis} left={Z_LEFT_PX} />
      <PlatformFront width_mm={analysis.layout.machine.platform.width_mm} frame={frame} />
      <rect className="elev-ruler-ground" x={0} y={0} width={Z_LEFT_PX} height={height} />
      <ZRuler axis={axis} pxPerMm={frame.pxPerMm} />
    </svg>
  );
}

/** The view: the drawing, and over it what can be taken hold of. A press on the ruler sets the height. */
export function Elevation() {
  const element = useRef<HTMLDivElement>(null);
  const size = useSize(element);
  const bench = useWorkbench();
  const analysis = useAnalysisLater();
  const frame = useFrame(analysis.build.height_mm, size);
  const press = (event: PointerEvent<HTMLDivElement>) => {
    const box = event.currentTarget.getBoundingClientRect();
    if (event.clientX - box.left <= Z_LEFT_PX) setHeightAt(bench, frame.axis, event.clientY - box.top);
  };
  return (
    <div ref={element} className="elevation-canvas" data-testid="elevation-view" onPointerDown={press}>
      {size.width > 0 && (
        <>
          <Front analysis={analysis} frame={frame} height={size.height} />
          <HeightHandle axis={frame.axis} width={size.width} />
          <StepHandles axis={frame.axis} width={size.width} />
        </>
      )}
    </div>
  );
}
