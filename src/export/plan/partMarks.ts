/**
 * Parts in a picture of the plan: each piece in its laser's tint and hatching, what no laser exposes cross-hatched in
 * the warning colour, cuts as thick lines, the part's name where it fits. Parts that end below the height are dotted
 * footprints. Plate millimetres in, picture px out.
 */
import { sectionAt } from '../../build/sectionAt';
import type { LayerFigures, PartView, Piece, Seam } from '../../build/types';
import { boxOf } from '../../geometry/region';
import type { Region } from '../../geometry/types';
import type { Px } from '../../units/types';
import { boxAround, boxesMeet, clearPlace, type ScreenBox } from './clearPlace';
import { toPicture, type Frame } from './frame';
import type { PlanInk } from './ink';
import { hatch, line, outline, segments, write } from './marks';
import { THICK_PX, THIN_PX, type Hatching } from './palette';
import type { PlanPicture } from './planPicture';

/** Names hide on parts smaller than this, and where they would stick out. */
const LABEL_LEAST_PX: Px = 16;
/** Mean width of a letter of a name. */
const LETTER_PX: Px = 7;
const DOTTED: readonly Px[] = [1, 3];
const HALO_PX: Px = 3;
const UNASSIGNED: readonly Hatching[] = [45, 135].map((angle_deg) => ({
  angle_deg,
  spacing_px: 7,
  dash_px: [],
}));

function pieceMarks(frame: Frame, ink: PlanInk, { region, laser }: Piece): string[] {
  if (laser < 0) {
    const pen = { colour: ink.ground.warning, width_px: THIN_PX };
    const crossed = UNASSIGNED.map((hatching) => hatch(frame, region, hatching, pen));
    return [outline(frame, region, null, { colour: ink.ground.sheet }), ...crossed];
  }
  const { tint, stroke, hatching } = ink.laser(laser);
  return [
    outline(frame, region, null, { colour: tint }),
    hatch(frame, region, hatching, { colour: stroke, width_px: THIN_PX }),
  ];
}

function seamMarks(frame: Frame, { ground }: PlanInk, { path }: Seam): string[] {
  return [
    segments(frame, path, { colour: ground.sheet, width_px: THICK_PX + HALO_PX }),
    segments(frame, path, { colour: ground.ink, width_px: THICK_PX }),
  ];
}

const sectionIn = (part: PartView, layer: LayerFigures | null): Region =>
  layer ? sectionAt(part, layer.height_mm) : [];

function edgeMarks(frame: Frame, { ground }: PlanInk, part: PartView, layer: LayerFigures | null): string[] {
  const section = sectionIn(part, layer);
  const hidden = section.length === 0;
  const footprint = outline(frame, part.footprint, {
    colour: ground.line,
    width_px: THIN_PX,
    dash_px: hidden ? DOTTED : [],
  });
  return hidden
    ? [footprint]
    : [footprint, outline(frame, section, { colour: ground.ink, width_px: THIN_PX })];
}

/** Sections, outlines and cuts of all parts. */
export function partMarks(frame: Frame, ink: PlanInk, { parts, layer }: PlanPicture): string[] {
  return [
    ...(layer?.pieces ?? []).flatMap((piece) => pieceMarks(frame, ink, piece)),
    ...parts.flatMap((part) => edgeMarks(frame, ink, part, layer)),
    ...(layer?.seams ?? []).flatMap((seam) => seamMarks(frame, ink, seam)),
  ];
}

/** Names of parts, and what they cover. */
export interface Names {
  readonly marks: readonly string[];
  readonly boxes: readonly ScreenBox[];
}

function nameOf(frame: Frame, ink: PlanInk, part: PartView, below: boolean) {
  const { minX, maxX, minY, maxY } = boxOf(part.footprint);
  const [width, height] = [(maxX - minX) * frame.pxPerMm, (maxY - minY) * frame.pxPerMm];
  const half: Px = (part.id.length * LETTER_PX) / 2;
  if (Math.min(width, height) < LABEL_LEAST_PX || width < 2 * half) return null;
  const at = toPicture(frame, (minX + maxX) / 2, (minY + maxY) / 2);
  const { ink: strong, note, sheet } = ink.ground;
  const mark = write(part.id, at, { colour: below ? note : strong, bold: !below, halo: sheet });
  return { mark, box: boxAround(at, half + 4, 8) };
}

/** A name beside its part, clear of what is taken, with a line to the part; null where there is no room. */
function nameBeside(frame: Frame, ink: PlanInk, part: PartView, taken: readonly ScreenBox[], below: boolean) {
  const { minX, maxX, minY, maxY } = boxOf(part.footprint);
  const own = toPicture(frame, (minX + maxX) / 2, (minY + maxY) / 2);
  const half = { width: (part.id.length * LETTER_PX) / 2 + 2, height: 7 };
  const reach = ((maxX - minX) / 2) * frame.pxPerMm;
  const right = { left: own.left + reach + half.width + 3, top: own.top };
  const inside = ({ left, top }: typeof own): boolean =>
    left - half.width > frame.left &&
    left + half.width < frame.right &&
    top - half.height > frame.top &&
    top + half.height < frame.bottom;
  // to the right of the part; to its left at the platform's right edge
  const wanted = inside(right) ? right : { ...right, left: own.left - reach - half.width - 3 };
  const at = clearPlace(wanted, half, taken, inside);
  const box = boxAround(at, half.width, half.height);
  if (!inside(at) || taken.some((other) => boxesMeet(box, other))) return null;
  const { ink: strong, note, sheet } = ink.ground;
  const leader = line(own, at, { colour: strong, width_px: THIN_PX });
  const mark = write(part.id, at, { colour: below ? note : strong, bold: !below, halo: sheet });
  return { mark: leader + mark, box };
}

/** The names of the parts that have room for them; where `every`, of the others too, beside them. */
export function partNames(frame: Frame, ink: PlanInk, picture: PlanPicture, every = false): Names {
  const { parts, layer } = picture;
  const below = (part: PartView): boolean => sectionIn(part, layer).length === 0;
  const inside = parts.map((part) => nameOf(frame, ink, part, below(part)));
  const named = inside.filter((name) => name !== null);
  const taken = named.map(({ box }) => box);
  if (every)
    for (const [p, part] of parts.entries()) {
      if (inside[p] !== null) continue;
      const name = nameBeside(frame, ink, part, taken, below(part));
      if (name === null) continue;
      // lines to parts lie under the names
      named.unshift(name);
      taken.push(name.box);
    }
  return { marks: named.map(({ mark }) => mark), boxes: taken };
}
