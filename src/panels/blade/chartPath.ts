/**
 * The met length as a line on screen. Millimetres in, CSS px out; many vertices in one column of pixels are drawn as
 * the least and the largest of them.
 */
import { metAt, type MetProfile, type Rise } from '../../build/bladeProfile';
import type { Px } from '../../units/types';

export interface Scale {
  toX(place_mm: number): Px;
  toY(met_mm: number): Px;
}

interface Column {
  readonly x: Px;
  readonly first: Px;
  last: Px;
  least: Px;
  most: Px;
}

/** An SVG path over the places of the stroke; empty where nothing is met. */
export function metPath({ at_mm, below_mm, above_mm }: MetProfile, { toX, toY }: Scale): string {
  const columns: Column[] = [];
  const add = (place: number, met: number): void => {
    const x = Math.round(toX(place) * 2) / 2;
    const y = toY(met);
    const column = columns.at(-1);
    if (column?.x !== x) columns.push({ x, first: y, last: y, least: y, most: y });
    else {
      column.last = y;
      column.least = Math.min(column.least, y);
      column.most = Math.max(column.most, y);
    }
  };
  at_mm.forEach((place, i) => {
    add(place, below_mm[i]);
    add(place, above_mm[i]);
  });
  const shown = (value: Px): string => value.toFixed(1);
  const points = columns.flatMap(({ x, first, last, least, most }) => {
    const ys = first === last && least === most ? [first] : [first, least, most, last];
    return ys.map((y) => `${shown(x)} ${shown(y)}`);
  });
  return points.length === 0 ? '' : `M${points.join('L')}`;
}

/** A profile between the two places of a rise, both included. */
export function stretchOf(profile: MetProfile, { from_mm, to_mm }: Rise): MetProfile {
  const [low, high] = from_mm < to_mm ? [from_mm, to_mm] : [to_mm, from_mm];
  const points: (readonly [place: number, below: number, above: number])[] = [];
  profile.at_mm.forEach((place, i) => {
    if (place >= low - 1e-6 && place <= high + 1e-6)
      points.push([place, profile.below_mm[i], profile.above_mm[i]]);
  });
  const end = (place: number) => [place, metAt(profile, place), metAt(profile, place)] as const;
  if (!points.some(([place]) => place <= low + 1e-6)) points.unshift(end(low));
  if (!points.some(([place]) => place >= high - 1e-6)) points.push(end(high));
  const column = (k: 0 | 1 | 2): Float64Array => Float64Array.from(points, (point) => point[k]);
  return { at_mm: column(0), below_mm: column(1), above_mm: column(2) };
}
