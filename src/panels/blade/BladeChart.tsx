/**
 * The length of section under the blade against its place along the stroke, at the height shown: the blade travels to the
 * right. The steepest rise is drawn thick, the largest met length has a mark; the pointer reads off a place. Millimetres.
 */
import { t } from '../../language/index';
import { useMemo, useRef, useState, type PointerEvent } from 'react';
import type { BladeContact } from '../../build/blade';
import { metAt } from '../../build/bladeProfile';
import { cosSin } from '../../geometry/region';
import { tickLabel, ticks } from '../../export/plan/ruler';
import { useSize } from '../../canvas/viewport';
import type { Machine } from '../../layout/types';
import type { Mm, Px } from '../../units/types';
import { metText } from './bladeText';
import { metPath, stretchOf, type Scale } from './chartPath';

const LEFT_PX = 36;
const RIGHT_PX = 12;
const TOP_PX = 20;
const BOTTOM_PX = 36;

interface Frame extends Scale {
  readonly width: Px;
  readonly base: Px;
  readonly half_mm: Mm;
  readonly most_mm: Mm;
  readonly pxPerMm: number;
  readonly pxPerMet: number;
}

/** Half the platform along the stroke. */
function halfStroke({ platform, recoater }: Machine): Mm {
  const [ux, uy] = cosSin(recoater.towards_deg);
  return (Math.abs(ux) * platform.width_mm + Math.abs(uy) * platform.depth_mm) / 2;
}

function frameOf(contact: BladeContact, machine: Machine, width: Px, height: Px): Frame {
  const { at_mm } = contact.profile;
  const reach = at_mm.length === 0 ? 0 : Math.max(-at_mm[0], at_mm[at_mm.length - 1]);
  const half_mm = Math.max(halfStroke(machine), reach);
  const most_mm = Math.max(10, 1.05 * contact.largest.met_mm);
  const base = height - BOTTOM_PX;
  const pxPerMm = Math.max(1, width - LEFT_PX - RIGHT_PX) / (2 * half_mm);
  const pxPerMet = Math.max(1, base - TOP_PX) / most_mm;
  return {
    width,
    base,
    half_mm,
    most_mm,
    pxPerMm,
    pxPerMet,
    toX: (place) => LEFT_PX + (place + half_mm) * pxPerMm,
    toY: (met) => base - met * pxPerMet,
  };
}

function Axes({ frame }: { readonly frame: Frame }) {
  const { base, width, half_mm, most_mm } = frame;
  const right = width - RIGHT_PX;
  return (
    <g>
      <line x1={LEFT_PX} x2={right} y1={base} y2={base} />
      <line x1={LEFT_PX} x2={LEFT_PX} y1={TOP_PX - 4} y2={base} />
      {ticks(-half_mm, half_mm, frame.pxPerMm, 40).map(({ value, major }) => (
        <g key={value}>
          <line x1={frame.toX(value)} x2={frame.toX(value)} y1={base} y2={base + (major ? 6 : 3)} />
          {major && (
            <text x={frame.toX(value)} y={base + 18} textAnchor="middle">
              {tickLabel(value)}
            </text>
          )}
        </g>
      ))}
      {ticks(0, most_mm, frame.pxPerMet, 20)
        .filter(({ major }) => major)
        .map(({ value }) => (
          <g key={value}>
            <line x1={LEFT_PX - 4} x2={LEFT_PX} y1={frame.toY(value)} y2={frame.toY(value)} />
            <text x={LEFT_PX - 6} y={frame.toY(value) + 4} textAnchor="end">
              {tickLabel(value)}
            </text>
          </g>
        ))}
      <text x={4} y={12}>
        {t('met, mm')}
      </text>
      <text x={right} y={base + 32} textAnchor="end">
        {t('along the stroke from the centre, mm →')}
      </text>
    </g>
  );
}

/** The outline between the places of the steepest rise, and a mark at the largest met length. */
function Marks({ contact, frame }: { readonly contact: BladeContact; readonly frame: Frame }) {
  const { steepest, largest, profile } = contact;
  const rise = useMemo(() => metPath(stretchOf(profile, steepest), frame), [profile, steepest, frame]);
  if (largest.met_mm === 0) return null;
  const [x, y] = [frame.toX(largest.at_mm), frame.toY(largest.met_mm)];
  return (
    <g>
      <path className="blade-rise" d={rise} />
      <path className="blade-most" d={`M${x - 4} ${y - 8}h8l-4 6z`} />
    </g>
  );
}

export function BladeChart({
  contact,
  machine,
}: {
  readonly contact: BladeContact;
  readonly machine: Machine;
}) {
  const element = useRef<HTMLDivElement>(null);
  const { width, height } = useSize(element);
  const [pointed, setPointed] = useState<Mm | null>(null);
  const frame = useMemo(() => frameOf(contact, machine, width, height), [contact, machine, width, height]);
  const path = useMemo(() => metPath(contact.profile, frame), [contact, frame]);
  const point = (event: PointerEvent<HTMLDivElement>): void => {
    const x = event.clientX - event.currentTarget.getBoundingClientRect().left;
    const place = (x - LEFT_PX) / frame.pxPerMm - frame.half_mm;
    setPointed(Math.abs(place) <= frame.half_mm ? place : null);
  };
  return (
    <div
      ref={element}
      className="blade-chart"
      data-testid="blade-chart"
      onPointerMove={point}
      onPointerLeave={() => setPointed(null)}
    >
      {width > 0 && (
        <svg
          width={width}
          height={height}
          role="img"
          aria-label={t('Length met by the blade along its stroke')}
        >
          <path className="blade-met" d={path} />
          <Marks contact={contact} frame={frame} />
          <Axes frame={frame} />
          {pointed !== null && (
            <line
              className="blade-pointer"
              x1={frame.toX(pointed)}
              x2={frame.toX(pointed)}
              y1={TOP_PX}
              y2={frame.base}
            />
          )}
        </svg>
      )}
      <span className="blade-read">
        {pointed !== null &&
          t('at {place}: {met}', { place: metText(pointed), met: metText(metAt(contact.profile, pointed)) })}
      </span>
    </div>
  );
}
