/**
 * What stands around the plan in a picture: rulers in mm, arrows of gas flow and blade at the edges they come from, a
 * line above, a key of the lasers below, and words across. Degrees counter-clockwise from +x, picture px.
 */
import { t } from '../../language/index';
import type { Layout } from '../../layout/types';
import type { Degrees, Px, ScreenPoint } from '../../units/types';
import { boxAround, type ScreenBox } from './clearPlace';
import { RULER_BOTTOM_PX, RULER_LEFT_PX, toPicture, type Frame, LEGEND_GAP_PX, LEGEND_PX } from './frame';
import type { PlanInk } from './ink';
import { edgePoint } from './lineEnds';
import { box, escapeXml, hatch, line, outline, write, type Pen } from './marks';
import { THICK_PX, THIN_PX } from './palette';
import { tickLabel, ticks } from './ruler';

const LABEL_EVERY_PX: Px = 48;
const MINOR_PX: Px = 4;
const MAJOR_PX: Px = 8;

function rulerX(frame: Frame, ink: PlanInk, half_mm: number): string[] {
  const top = frame.planBottom - RULER_BOTTOM_PX;
  const pen: Pen = { colour: ink.ground.line, width_px: THIN_PX };
  return ticks(-half_mm, half_mm, frame.pxPerMm, LABEL_EVERY_PX).flatMap(({ value, major }) => {
    const { left } = toPicture(frame, value, 0);
    const tick = line({ left, top }, { left, top: top + (major ? MAJOR_PX : MINOR_PX) }, pen);
    if (!major) return [tick];
    return [tick, write(tickLabel(value), { left, top: top + 16 }, { colour: ink.ground.note })];
  });
}

function rulerY(frame: Frame, ink: PlanInk, half_mm: number): string[] {
  const left = RULER_LEFT_PX;
  const pen: Pen = { colour: ink.ground.line, width_px: THIN_PX };
  return ticks(-half_mm, half_mm, frame.pxPerMm, LABEL_EVERY_PX).flatMap(({ value, major }) => {
    const { top } = toPicture(frame, 0, value);
    const tick = line({ left: left - (major ? MAJOR_PX : MINOR_PX), top }, { left, top }, pen);
    if (!major) return [tick];
    const at = { left: left - MAJOR_PX - 2, top };
    return [tick, write(tickLabel(value), at, { colour: ink.ground.note, align: 'end' })];
  });
}

/** Both rulers over the platform's extent. */
export function rulerMarks(frame: Frame, ink: PlanInk, { machine }: Layout): string[] {
  const { paper, ink: strong, note } = ink.ground;
  const bottom = frame.planBottom - RULER_BOTTOM_PX;
  const extent: Pen = { colour: strong, width_px: THICK_PX };
  return [
    box(0, bottom, frame.width, RULER_BOTTOM_PX, paper),
    box(0, frame.top, RULER_LEFT_PX, frame.planBottom - frame.top, paper),
    ...rulerX(frame, ink, machine.platform.width_mm / 2),
    ...rulerY(frame, ink, machine.platform.depth_mm / 2),
    line({ left: frame.left, top: bottom }, { left: frame.right, top: bottom }, extent),
    line({ left: RULER_LEFT_PX, top: frame.top }, { left: RULER_LEFT_PX, top: frame.bottom }, extent),
    write('mm', { left: RULER_LEFT_PX / 2, top: bottom + 13 }, { colour: note }),
  ];
}

/** An arrow that begins and ends `half` px before and behind its middle, turned towards a direction. */
function arrow(at: ScreenPoint, towards: Degrees, kind: 'gas' | 'blade', colour: string): string {
  const shaft =
    kind === 'gas'
      ? `<path d="M-13 -5H4M-13 0H7M-13 5H4" stroke="${colour}" stroke-width="${THIN_PX}" fill="none"/>`
      : `<path d="M-10 -11V11M-10 0H7" stroke="${colour}" stroke-width="${THICK_PX}" fill="none"/>`;
  const head = `<path d="M13 0L4 -5V5Z" fill="${colour}"/>`;
  return `<g transform="translate(${at.left.toFixed(2)} ${at.top.toFixed(2)}) rotate(${-towards})">${shaft}${head}</g>`;
}

const OUT_PX: Px = 23;
/** In the middle between ruler and platform. */
const WORD_OUT_PX: Px = 25;
const APART_PX: Px = 30;

export interface Streams {
  readonly marks: readonly string[];
  readonly boxes: readonly ScreenBox[];
}

/** One stream's arrow and word outside the edge it comes from, beside the middle on the side of `hand` (±1). */
function stream(frame: Frame, ink: PlanInk, layout: Layout, kind: 'gas' | 'blade'): Streams {
  const { gasFlow, recoater, platform } = layout.machine;
  const towards = kind === 'gas' ? gasFlow.towards_deg : recoater.towards_deg;
  const [x, y] = [Math.cos((towards * Math.PI) / 180), Math.sin((towards * Math.PI) / 180)];
  const from = edgePoint(towards + 180, platform);
  const edge = toPicture(frame, from.x, from.y);
  const hand = (kind === 'gas' ? 1 : -1) * (y > 0.5 || x > 0.5 ? 1 : -1);
  const beside = (px: Px, out: Px): ScreenPoint => ({
    left: edge.left - out * x + px * hand * y,
    top: edge.top + out * y + px * hand * x,
  });
  const at = beside(APART_PX, OUT_PX);
  const word = beside(APART_PX + Math.abs(y) * 38 + Math.abs(x) * 22, WORD_OUT_PX);
  const colour = ink.ground.ink;
  return {
    marks: [
      arrow(at, towards, kind, colour),
      write(t(kind === 'gas' ? 'GAS' : 'BLADE'), word, { colour, bold: true }),
    ],
    boxes: [boxAround(at, 16, 14), boxAround(word, 24, 9)],
  };
}

/** Arrows and words of gas flow and blade. */
export function streamMarks(frame: Frame, ink: PlanInk, layout: Layout): Streams {
  const both = [stream(frame, ink, layout, 'gas'), stream(frame, ink, layout, 'blade')];
  return { marks: both.flatMap(({ marks }) => marks), boxes: both.flatMap(({ boxes }) => boxes) };
}

const ENTRY_PX: Px = 88;
const SWATCH = { width: 36, height: 16 } as const;

const entriesPerRow = (width_px: Px, left_px: Px): number =>
  Math.max(1, Math.floor((width_px - left_px) / ENTRY_PX));

/** Rows that the key of so many lasers takes. */
export const legendRows = (lasers: number, width_px: Px): number =>
  Math.ceil(lasers / entriesPerRow(width_px, RULER_LEFT_PX));

/** The key of the lasers: a hatched swatch and a number each; those that are off say so. */
export function legendMarks(frame: Frame, ink: PlanInk, { machine }: Layout): string[] {
  const perRow = entriesPerRow(frame.width, RULER_LEFT_PX);
  // A plate of its own whose origin is the swatch's centre, at one px per mm.
  return machine.lasers.flatMap(({ id, on }, i) => {
    const left = RULER_LEFT_PX + (i % perRow) * ENTRY_PX;
    const top = frame.planBottom + Math.floor(i / perRow) * LEGEND_PX + LEGEND_GAP_PX;
    const { tint, stroke, hatching } = ink.laser(i);
    const [w, h] = [SWATCH.width / 2, SWATCH.height / 2];
    const region = [Float64Array.of(-w, -h, w, -h, w, h, -w, h)];
    const local = { ...frame, pxPerMm: 1, left, right: left + 2 * w, top, bottom: top + 2 * h };
    const words = { left: left + 2 * w + 6, top: top + h };
    return [
      outline(local, region, { colour: ink.ground.ink, width_px: THIN_PX }, { colour: tint }),
      hatch(local, region, hatching, { colour: stroke, width_px: THIN_PX }),
      write(on ? id : t('{laser} off', { laser: id }), words, { colour: ink.ground.ink, align: 'start' }),
    ];
  });
}

/** A line of words above the plan. */
export const captionMark = (ink: PlanInk, caption: string): string =>
  write(caption, { left: RULER_LEFT_PX, top: 16 }, { colour: ink.ground.ink, align: 'start', size_px: 13 });

/** Words across the plan, as outlined letters: what lies under them stays legible. */
export function stampMark(frame: Frame, ink: PlanInk, stamp: string): string {
  const { left, top } = toPicture(frame, 0, 0);
  const [width, height] = [frame.right - frame.left, frame.bottom - frame.top];
  const size = Math.min(110, (0.8 * Math.hypot(width, height)) / Math.max(4, 0.7 * stamp.length));
  const turn = (-Math.atan2(height, width) * 180) / Math.PI;
  const place = `translate(${left.toFixed(2)} ${top.toFixed(2)}) rotate(${turn.toFixed(2)})`;
  const text = `<text y="${(0.35 * size).toFixed(2)}" font-size="${size.toFixed(2)}" font-weight="600" text-anchor="middle" fill="none"`;
  const pens = [
    `stroke="${ink.ground.sheet}" stroke-width="5"`,
    `stroke="${ink.ground.warning}" stroke-width="2"`,
  ];
  const letters = pens.map(
    (pen, i) => `${text} ${pen}${i === 0 ? ' aria-hidden="true"' : ''}>${escapeXml(stamp)}</text>`,
  );
  return `<g transform="${place}">${letters.join('')}</g>`;
}
