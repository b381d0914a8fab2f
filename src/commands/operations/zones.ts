/**
 * Changing the zones of the chosen strategy: strips, shared band, lasers, drawn outlines. An operation that does not
 * fit the strategy returns the layout itself. Platform millimetres; lines ascend along the strips' normal.
 */
import type { DrawnZone, LaserId, LayoutAt, LayoutRing, StripsZoning } from '../../layout/types';
import { COORDINATE_LIMIT_mm } from '../../layout/limits';
import type { Degrees, Mm } from '../../units/types';
import { roundMm } from '../../units/round';
import { stripNormal } from '../../zoning/lines';
import { clamp, halfExtent, roundRing, withZoning } from './edit';
import { orUnchanged, reviewedAt } from './review';
import { equalLines, equalStrips, FEWEST_STRIPS, lasersAlong, MOST_STRIPS, runAngle } from './strategy';
import { NARROWEST_ZONE_MM } from './zoneLines';

/** Strips of equal width, `count` of them (2 to 12). */
export function setStripCount(layout: LayoutAt, count: number): LayoutAt {
  const { zoning } = layout;
  const sane = Number.isInteger(count) && count >= FEWEST_STRIPS && count <= MOST_STRIPS;
  if (zoning.strategy !== 'strips' || !sane || zoning.lasers.length === count) return layout;
  return withZoning(layout, equalStrips(layout, zoning.run_deg, count));
}

/** Borders of all strips, the platform's edges included. */
function stripBorders(layout: LayoutAt, zoning: StripsZoning): Mm[] {
  const half = halfExtent(layout.machine, ...stripNormal(zoning.run_deg));
  return [-half, ...zoning.lines_mm.map((c) => clamp(c, -half, half)), half];
}

const widthsOf = (borders: readonly Mm[]): Mm[] => borders.slice(1).map((b, i) => b - borders[i]!);

/** Cuts a strip in the middle (the widest where none is named) and gives the new half to the laser used least. */
export function addStrip(layout: LayoutAt, index?: number): LayoutAt {
  const { zoning, machine } = layout;
  if (zoning.strategy !== 'strips' || zoning.lasers.length >= MOST_STRIPS) return layout;
  const borders = stripBorders(layout, zoning);
  const widths = widthsOf(borders);
  const cut = index ?? widths.indexOf(Math.max(...widths));
  if (!(widths[cut]! >= 2 * NARROWEST_ZONE_MM)) return layout;
  const middle = roundMm((borders[cut]! + borders[cut + 1]!) / 2);
  const uses = (id: LaserId) => zoning.lasers.filter((used) => used === id).length;
  const candidates = lasersAlong(machine, zoning.run_deg, machine.lasers.length);
  const laser = candidates.reduce((best, id) => (uses(id) < uses(best) ? id : best));
  return withZoning(layout, {
    ...zoning,
    lines_mm: zoning.lines_mm.toSpliced(cut, 0, middle),
    lasers: zoning.lasers.toSpliced(cut + 1, 0, laser),
  });
}

/** Takes a strip away (the narrowest where none is named); its ground goes to the narrower neighbour. */
export function removeStrip(layout: LayoutAt, index?: number): LayoutAt {
  const { zoning } = layout;
  if (zoning.strategy !== 'strips' || zoning.lasers.length <= FEWEST_STRIPS) return layout;
  const widths = widthsOf(stripBorders(layout, zoning));
  const gone = index ?? widths.indexOf(Math.min(...widths));
  if (!(gone in widths)) return layout;
  const toFront = gone > 0 && (gone === widths.length - 1 || widths[gone - 1]! <= widths[gone + 1]!);
  return withZoning(layout, {
    ...zoning,
    lines_mm: zoning.lines_mm.toSpliced(toFront ? gone - 1 : gone, 1),
    lasers: zoning.lasers.toSpliced(gone, 1),
  });
}

/** Turns the strips; lines keep their share of the platform. Equal strips stay equal. */
export function setStripDirection(layout: LayoutAt, run_deg: Degrees): LayoutAt {
  const { zoning, machine } = layout;
  if (zoning.strategy !== 'strips' || !Number.isFinite(run_deg)) return layout;
  const run = runAngle(run_deg);
  if (run === zoning.run_deg) return layout;
  const count = zoning.lasers.length;
  const before = halfExtent(machine, ...stripNormal(zoning.run_deg));
  const after = halfExtent(machine, ...stripNormal(run));
  const scaled = zoning.lines_mm.map((c) => roundMm((c * after) / before));
  const ascending = scaled.every((c, i) => i === 0 || c > scaled[i - 1]!);
  const near = scaled.every((c) => Math.abs(c) <= COORDINATE_LIMIT_mm);
  const lines_mm = ascending && near ? scaled : equalLines(machine, run, count);
  return withZoning(layout, { ...zoning, run_deg: run, lines_mm });
}

/** Width of the shared band: 0 to the platform's longer side. */
export function setSharedBand(layout: LayoutAt, width_mm: Mm): LayoutAt {
  const { zoning } = layout;
  const { platform } = layout.machine;
  if (!('sharedBand_mm' in zoning) || !Number.isFinite(width_mm)) return layout;
  const sharedBand_mm = roundMm(clamp(width_mm, 0, Math.max(platform.width_mm, platform.depth_mm)));
  return sharedBand_mm === zoning.sharedBand_mm ? layout : withZoning(layout, { ...zoning, sharedBand_mm });
}

/** Gives a zone to lasers: one for quadrants and strips (the first named), one or more for a drawn zone. */
export function setZoneLasers(layout: LayoutAt, index: number, ids: readonly LaserId[]): LayoutAt {
  const { zoning, machine } = layout;
  const known = machine.lasers.map((laser) => laser.id).filter((id) => ids.includes(id));
  if (known.length === 0 || zoning.strategy === 'wholeField') return layout;
  if (zoning.strategy !== 'drawn') {
    const first = ids.find((id) => known.includes(id))!;
    if (!(index in zoning.lasers) || zoning.lasers[index] === first) return layout;
    return withZoning(layout, { ...zoning, lasers: zoning.lasers.with(index, first) });
  }
  const zone = zoning.zones[index];
  if (!zone) return layout;
  return withZoning(layout, { ...zoning, zones: zoning.zones.with(index, { ...zone, lasers: known }) });
}

/**
 * Adds a drawn zone. A plate that is not divided by drawn zones starts with this one alone: the other zones would
 * unite with it, and it would change nothing. The layout itself where an outline encloses nothing.
 */
export function addDrawnZone(
  layout: LayoutAt,
  rings: readonly LayoutRing[],
  lasers: readonly LaserId[],
): LayoutAt {
  const known = lasers.filter((id) => layout.machine.lasers.some((laser) => laser.id === id));
  if (known.length === 0 || rings.length === 0) return layout;
  const zone: DrawnZone = { lasers: [...new Set(known)], rings: rings.map(roundRing) };
  const zones = layout.zoning.strategy === 'drawn' ? layout.zoning.zones : [];
  const next = withZoning(layout, { strategy: 'drawn', zones: [...zones, zone] });
  return orUnchanged(layout, reviewedAt(layout, next));
}

/** Gives a drawn zone another outline. */
export function setDrawnZone(layout: LayoutAt, index: number, rings: readonly LayoutRing[]): LayoutAt {
  const { zoning } = layout;
  if (zoning.strategy !== 'drawn' || !zoning.zones[index] || rings.length === 0) return layout;
  const zone = { ...zoning.zones[index], rings: rings.map(roundRing) };
  const next = withZoning(layout, { ...zoning, zones: zoning.zones.with(index, zone) });
  return orUnchanged(layout, reviewedAt(layout, next));
}

/** Takes a drawn zone away; the plate itself where there is none of that index. */
export function removeDrawnZone(layout: LayoutAt, index: number): LayoutAt {
  const { zoning } = layout;
  if (zoning.strategy !== 'drawn' || !(index in zoning.zones)) return layout;
  return withZoning(layout, { ...zoning, zones: zoning.zones.toSpliced(index, 1) });
}
