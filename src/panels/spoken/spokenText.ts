/**
 * What a screen reader says about parts, zones and zone lines: names, places and who exposes how much of a part in the
 * layer shown. Millimetres on the platform; shares in per cent of the part's section area, whole numbers.
 */
import { t } from '../../language/index';
import type { LayerFigures } from '../../build/types';
import type { Layout, Part, Zoning } from '../../layout/types';
import { zoneLines } from '../../zoning/lines';
import { formatField } from '../../units/format';

/** With a minus sign: a hyphen is passed over by many voices. */
const mm = (value: number): string => `${formatField(Math.round(value * 1000) / 1000).replace('-', '−')} mm`;

/** Section areas of each part by laser, in the layer of `figures`; laser −1 is none. */
function areasByPart(figures: LayerFigures | null): ReadonlyMap<number, ReadonlyMap<number, number>> {
  const found = new Map<number, Map<number, number>>();
  for (const { part, laser, area_mm2 } of figures?.pieces ?? []) {
    const areas = found.get(part) ?? new Map<number, number>();
    found.set(part, areas.set(laser, (areas.get(laser) ?? 0) + area_mm2));
  }
  return found;
}

/** "38 % on L2, 62 % on L4"; what is in no zone is named. */
function sharesText({ machine }: Layout, areas: ReadonlyMap<number, number> | undefined): string {
  const whole = [...(areas?.values() ?? [])].reduce((sum, area) => sum + area, 0);
  if (!areas || whole === 0) return t('no section at this height');
  return [...areas]
    .sort(([a], [b]) => a - b)
    .map(([laser, area]) => {
      const percent = Math.round((100 * area) / whole);
      return laser < 0
        ? t('{percent} % on no laser', { percent })
        : t('{percent} % on {laser}', { percent, laser: machine.lasers[laser]?.id ?? '?' });
    })
    .join(', ');
}

const turned = ({ turn_deg }: Part): string =>
  turn_deg === 0 ? '' : t(', turned {turn}°', { turn: formatField(turn_deg) });

/** Of every part: "P07, x 120.5 mm, y 40 mm, 38 % on L2". */
export function partTexts(layout: Layout, figures: LayerFigures | null): readonly string[] {
  const areas = areasByPart(figures);
  return layout.parts.map((part, index) => {
    const [x, y] = part.at_mm;
    return `${part.id}, x ${mm(x)}, y ${mm(y)}${turned(part)}, ${sharesText(layout, areas.get(index))}`;
  });
}

/** "Zone line 1 of 2, x 12 mm"; a slanted one by its distance from the middle of the platform. */
export function lineText(zoning: Zoning, index: number): string {
  const lines = zoneLines(zoning);
  const line = lines[index];
  if (!line) return '';
  const axis = line.nx === 1 ? 'x' : line.ny === 1 ? 'y' : t('distance from the middle');
  return t('Zone line {number} of {lines}, {axis} {c}', {
    number: index + 1,
    lines: lines.length,
    axis,
    c: mm(line.c),
  });
}

/** What each laser exposes in the layer shown: "L1: 6 parts, section 11850 mm²". */
export function zoneTexts(layout: Layout, figures: LayerFigures | null): readonly string[] {
  return layout.machine.lasers.map(({ id, on }, laser) => {
    if (!on) return t('{id}: off', { id });
    const own = (figures?.pieces ?? []).filter((piece) => piece.laser === laser);
    const parts = new Set(own.map(({ part }) => part)).size;
    const area = own.reduce((sum, { area_mm2 }) => sum + area_mm2, 0);
    return t('{id}: {count} [part|parts], section {area} mm²', { id, count: parts, area: Math.round(area) });
  });
}
