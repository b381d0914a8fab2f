/**
 * Where the zones change over height: a wide dashed line across elevation and time per layer at the lower edge of every
 * step but the first, and in the elevation a handle at its right end. Dragged, or moved by arrows one layer (Shift: ten);
 * a step begins with a layer. A drag is one entry of history, Escape gives it up. Millimetres above the platform.
 */
import { t, type Text } from '../language/index';
import type { PointerEvent } from 'react';
import { moveStep, moveStepByLayers, stepLimits } from '../commands/operations/steps';
import type { Workbench } from '../store/types';
import { formatField, formatMm } from '../units/format';
import type { Mm, Px } from '../units/types';
import { useBench, useWorkbench } from './bench';
import { Handle } from './Handle';
import type { ZAxis } from './zAxis';

const HISTORY: Text = 'Move a change of zones';
/** Of the handle's middle, from the right edge of the elevation. */
const HANDLE_RIGHT_PX: Px = 14;
/** Handles nearer to each other than this stand beside each other. */
const HANDLE_PX: Px = 24;
/** Names nearer to each other than this would not be read. */
const NAME_PX: Px = 14;
const SHIFTED_LAYERS = 10;

interface StepEdge {
  readonly index: number;
  readonly from_mm: Mm;
  readonly y: Px;
}

/** The lower edges of steps that stand in the view, from the platform up. */
function useStepEdges(axis: ZAxis): readonly StepEdge[] {
  const zoning = useBench((state) => state.layout.zoning);
  return zoning
    .map(({ from_mm }, index) => ({ index, from_mm, y: axis.toPx(from_mm) }))
    .filter(({ index, from_mm }) => index > 0 && from_mm < axis.top_mm);
}

/** Edges whose names keep clear of each other; the upper one goes first. */
const named = (edges: readonly StepEdge[]): readonly StepEdge[] =>
  edges.reduceRight<StepEdge[]>(
    (kept, edge) => (kept.length === 0 || edge.y - kept.at(-1)!.y >= NAME_PX ? [...kept, edge] : kept),
    [],
  );

/** How many handles' widths each handle stands from the right, so that it can be taken hold of. */
const columns = (edges: readonly StepEdge[]): readonly number[] =>
  edges.reduce<number[]>((kept, { y }, i) => {
    const near = i > 0 && edges[i - 1]!.y - y < HANDLE_PX;
    return [...kept, near ? kept[i - 1]! + 1 : 0];
  }, []);

interface LinesProps {
  readonly axis: ZAxis;
  readonly left: Px;
  readonly right: Px;
}

/** The lines alone, as part of a drawing. */
export function StepLines({ axis, left, right }: LinesProps) {
  return useStepEdges(axis).map(({ index, y }) => (
    <line key={index} className="step-line" x1={left} x2={right} y1={y} y2={y} />
  ));
}

/** "zones from 60 mm" on every line that has room for it. */
export function StepNames({ axis, left }: Omit<LinesProps, 'right'>) {
  return named(useStepEdges(axis)).map(({ index, from_mm, y }) => (
    <text key={index} className="step-name" x={left + 4} y={y - 4}>
      {t('zones from {from} mm', { from: formatField(from_mm) })}
    </text>
  ));
}

/**
 * Follows the pointer from a press on a handle to its release; the handle keeps its distance to the pointer. Whatever else
 * ends it (a cancelled touch, a lost pointer, the window or the tab left) puts everything back.
 */
function dragStep(bench: Workbench, axis: ZAxis, { index, y }: StepEdge, event: PointerEvent): void {
  if (event.button !== 0 || bench.gestureOpen()) return;
  event.stopPropagation();
  const handle = event.currentTarget;
  const grip = event.clientY - y;
  const follow = (moved: Event): void => {
    if (!bench.gestureOpen()) return stop();
    const to_mm = axis.toMm((moved as globalThis.PointerEvent).clientY - grip);
    bench.change(t(HISTORY), (layout) => moveStep(layout, index, to_mm));
  };
  const cancel = (): void => {
    if (bench.gestureOpen()) bench.cancelGesture();
    stop();
  };
  const end = (): void => {
    if (bench.gestureOpen()) bench.endGesture();
    stop();
  };
  const heard = [
    ['pointermove', follow],
    ['pointercancel', cancel],
    ['pointerup', end],
    ['lostpointercapture', cancel],
  ] as const;
  const stop = (): void => {
    window.removeEventListener('blur', cancel);
    document.removeEventListener('visibilitychange', cancel);
    for (const [type, listener] of heard) handle.removeEventListener(type, listener);
  };
  handle.setPointerCapture(event.pointerId);
  for (const [type, listener] of heard) handle.addEventListener(type, listener);
  window.addEventListener('blur', cancel);
  document.addEventListener('visibilitychange', cancel);
  bench.beginGesture(t(HISTORY));
}

interface HandleProps {
  readonly axis: ZAxis;
  readonly edge: StepEdge;
  readonly left: Px;
}

function StepHandle({ axis, edge, left }: HandleProps) {
  const bench = useWorkbench();
  const { index, from_mm } = edge;
  const limits = stepLimits(bench.store.getState().layout, index);
  return (
    <Handle
      at={{ left, top: edge.y }}
      label={t('Change of zones {index}, its height', { index })}
      value={from_mm}
      least={limits?.min ?? from_mm}
      most={limits?.max ?? from_mm}
      valueText={t('zones from {from}', { from: formatMm(from_mm) })}
      className="handle-step"
      testId={`step-handle-${index}`}
      cursor="row-resize"
      history={t(HISTORY)}
      onPress={(event) => dragStep(bench, axis, edge, event)}
      onArrow={({ x, y }, held) =>
        bench.change(t(HISTORY), (layout) =>
          moveStepByLayers(layout, index, (x + y) * (held.shift ? SHIFTED_LAYERS : 1)),
        )
      }
    >
      <svg viewBox="-12 -12 24 24" aria-hidden="true">
        <path d="M0 -8L5 0L0 8L-5 0Z" className="handle-diamond" />
      </svg>
    </Handle>
  );
}

/** Handles of all changes of zones that stand in the view. */
export function StepHandles({ axis, width }: { axis: ZAxis; width: Px }) {
  const edges = useStepEdges(axis);
  const column = columns(edges);
  return edges.map((edge, i) => (
    <StepHandle
      key={edge.index}
      axis={axis}
      edge={edge}
      left={width - HANDLE_RIGHT_PX - HANDLE_PX * column[i]!}
    />
  ));
}
