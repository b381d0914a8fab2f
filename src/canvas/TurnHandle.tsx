/**
 * The handle that turns what is selected: one part about its own origin, several about the middle of their common box,
 * which a cross marks. Degrees counter-clockwise from +x, screen px.
 */
import { t } from '../language/index';
import { formatField } from '../units/format';
import type { Analysis } from '../build/types';
import { boxOf } from '../geometry/region';
import type { PartId } from '../layout/types';
import { groupPivot, turnTogether } from '../commands/operations/turn';
import { useAnalysis, useBench, useWorkbench } from './bench';
import { toScreen, type Size } from './camera';
import { turnGesture } from './gestures/turning';
import { Handle } from './Handle';
import type { HandlesProps } from './PlanHandles';
import { groupTurnPlace, turnPlace, type TurnPlace } from './plan/places';
import type { Modifiers } from './snapping';
import type { Camera } from '../store/types';
import { useCamera } from './viewport';

/** Half the arms of the cross. */
const CROSS_PX = 6;

const placeOf = (
  analysis: Analysis,
  selection: readonly PartId[],
  camera: Camera,
  size: Size,
): TurnPlace | null => {
  const lead = analysis.layout.parts.findIndex((part) => part.id === selection.at(-1));
  const [part, view] = [analysis.layout.parts[lead], analysis.parts[lead]];
  if (!part || !view) return null;
  if (selection.length === 1) return turnPlace(part, view, camera, size);
  const chosen = analysis.parts.filter(({ id }) => selection.includes(id));
  return groupTurnPlace(boxOf(chosen.flatMap(({ footprint }) => footprint)), camera, size);
};

function PivotCross({ selection, size }: { readonly selection: readonly PartId[]; readonly size: Size }) {
  const layout = useBench((state) => state.layout);
  const camera = useCamera();
  const [x, y] = groupPivot(layout, selection);
  const { left, top } = toScreen({ x, y }, camera, size);
  const d = `M${left - CROSS_PX} ${top}H${left + CROSS_PX}M${left} ${top - CROSS_PX}V${top + CROSS_PX}`;
  return (
    <>
      <path d={d} className="pivot-halo" />
      <path d={d} data-testid="turn-pivot" />
    </>
  );
}

function TurnIcon() {
  return (
    <svg viewBox="-12 -12 24 24" aria-hidden="true">
      <circle r="7" />
      <path d="M-3.5 1.5A3.7 3.7 0 1 0 0 -3.7" />
      <path d="M0 -6.2L-3 -3.6L0 -1.2Z" className="handle-head" />
    </svg>
  );
}

/** From the part, or the parts' box, to the handle; with the pivot of several parts. */
function Leader({ place, selection, size }: LeaderProps) {
  const { root, handle } = place;
  return (
    <svg className="plan-leader" aria-hidden="true">
      <line x1={root.left} y1={root.top} x2={handle.left} y2={handle.top} />
      {selection.length > 1 && <PivotCross selection={selection} size={size} />}
    </svg>
  );
}
interface LeaderProps {
  readonly place: TurnPlace;
  readonly selection: readonly PartId[];
  readonly size: Size;
}

/** Degrees that an arrow key turns by: up and left turn counter-clockwise, as the angle grows. */
const turnStep = (arrow: { readonly x: number; readonly y: number }, held: Modifiers): number =>
  (arrow.y - arrow.x) * (held.shift ? 15 : held.ctrl ? 0.1 : 1);

export default function TurnHandle({ host, size, onPress }: HandlesProps) {
  const bench = useWorkbench();
  const camera = useCamera();
  const analysis = useAnalysis();
  const selection = useBench((state) => state.view.selection);
  const place = placeOf(analysis, selection, camera, size);
  const lead = analysis.layout.parts.find((part) => part.id === selection.at(-1));
  if (!place || !lead) return null;
  const several = selection.length > 1;
  const name = several
    ? t('Turn {count} parts', { count: selection.length })
    : t('Turn {id}', { id: lead.id });
  const angle = `${formatField(lead.turn_deg)}°`;
  return (
    <>
      <Leader place={place} selection={selection} size={size} />
      <Handle
        at={place.handle}
        label={name}
        value={lead.turn_deg}
        least={0}
        most={360}
        valueText={several ? t('{part} at {angle}', { part: lead.id, angle }) : angle}
        className="handle-turn"
        testId="turn-handle"
        cursor="grab"
        history={name}
        onPress={(event) => onPress(event, (start) => turnGesture(host, start, lead.id, selection))}
        onArrow={(arrow, held) =>
          bench.change(name, (layout) => turnTogether(layout, selection, turnStep(arrow, held)))
        }
      >
        <TurnIcon />
      </Handle>
    </>
  );
}
