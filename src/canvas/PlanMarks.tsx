/**
 * Guides and gaps while parts are dragged, as a drawing writes them: thin lines, dimensions between arrows with their
 * number above. Screen px; the numbers are millimetres.
 */
import { useStore } from 'zustand';
import { formatField } from '../units/format';
import type { PlatePoint, Px, ScreenPoint } from '../units/types';
import { toScreen, type Size } from './camera';
import type { PlanHost } from './gestures/gesture';
import type { Gap, Guide } from './magnetism';

/** Guides stand out past what they join. */
const OUT_PX: Px = 12;
const ARROW_PX: Px = 6;
/** Gaps narrower than this have their arrows outside. */
const NARROW_PX: Px = 26;

interface DimensionProps {
  readonly from: ScreenPoint;
  readonly to: ScreenPoint;
  readonly text: string;
}

const arrow = (tip: ScreenPoint, angle: number): string => {
  const wing = (turn: number): string =>
    `${tip.left - ARROW_PX * Math.cos(angle + turn)} ${tip.top - ARROW_PX * Math.sin(angle + turn)}`;
  return `M${wing(0.3)}L${tip.left} ${tip.top}L${wing(-0.3)}`;
};

/** A dimension line with its arrows and its number, readable from the front or from the right (ISO 129-1 [memory]). */
export function Dimension({ from, to, text }: DimensionProps) {
  const [dx, dy] = [to.left - from.left, to.top - from.top];
  const length = Math.hypot(dx, dy);
  const angle = Math.atan2(dy, dx);
  const flip = length < NARROW_PX ? Math.PI : 0;
  const degrees = (angle * 180) / Math.PI;
  const upright = degrees > 90 || degrees <= -90 ? degrees + 180 : degrees;
  const middle = { left: (from.left + to.left) / 2, top: (from.top + to.top) / 2 };
  const d = `M${from.left} ${from.top}L${to.left} ${to.top}${arrow(from, angle + Math.PI + flip)}${arrow(to, angle + flip)}`;
  return (
    <g className="dimension">
      <path d={d} className="mark-halo" />
      <path d={d} />
      <text
        x={middle.left}
        y={middle.top}
        dy="-5"
        textAnchor="middle"
        transform={`rotate(${upright} ${middle.left} ${middle.top})`}
      >
        {text}
      </text>
    </g>
  );
}

type Place = (p: PlatePoint) => ScreenPoint;

function GuideLine({ guide, place }: { readonly guide: Guide; readonly place: Place }) {
  const { axis, at, from, to } = guide;
  const upright = axis === 'x';
  const a = place(upright ? { x: at, y: from } : { x: from, y: at });
  const b = place(upright ? { x: at, y: to } : { x: to, y: at });
  const d = upright
    ? `M${a.left} ${a.top + OUT_PX}V${b.top - OUT_PX}`
    : `M${a.left - OUT_PX} ${a.top}H${b.left + OUT_PX}`;
  return <path d={d} className="guide" />;
}

function GapLine({ gap, place }: { readonly gap: Gap; readonly place: Place }) {
  const { axis, from, to, across } = gap;
  const at = (along: number): PlatePoint =>
    axis === 'x' ? { x: along, y: across } : { x: across, y: along };
  return <Dimension from={place(at(from))} to={place(at(to))} text={formatField(to - from)} />;
}

export function PlanMarks({ host, size }: { readonly host: PlanHost; readonly size: Size }) {
  const marks = useStore(host.ui, (ui) => ui.marks);
  if (marks === null || marks.guides.length + marks.gaps.length === 0) return null;
  const place: Place = (p) => toScreen(p, host.camera(), size);
  return (
    <svg
      className="plan-marks"
      width={size.width}
      height={size.height}
      aria-hidden="true"
      data-testid="plan-marks"
    >
      {marks.guides.map((guide) => (
        <GuideLine key={`${guide.axis}${guide.at}`} guide={guide} place={place} />
      ))}
      {marks.gaps.map((gap) => (
        <GapLine key={`${gap.axis}${gap.from} ${gap.across}`} gap={gap} place={place} />
      ))}
    </svg>
  );
}
