/**
 * What was found in the file, as one drawing: outlines in ink, lines that were left out dash-dot in the warning colour,
 * with the size of the whole.
 */
import { useMemo } from 'react';
import { ringFromLayout } from '../../geometry/ring';
import type { OutlineImport, PlacedShape } from '../../import/types';
import type { LayoutRing } from '../../layout/types';
import { formatMm } from '../../units/format';

const short = (value: number): string => String(Math.round(value * 100) / 100);

function path(points: ArrayLike<number>, close: boolean, dx = 0, dy = 0): string {
  let d = '';
  for (let i = 0; i < points.length; i += 2)
    d += `${i === 0 ? 'M' : 'L'}${short((points[i] ?? 0) + dx)} ${short(-(points[i + 1] ?? 0) - dy)}`;
  return close ? `${d}Z` : d;
}
export const ringsPath = (rings: readonly LayoutRing[], dx = 0, dy = 0): string =>
  rings.map((ring) => path(ringFromLayout(ring), true, dx, dy)).join('');

interface Extent {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Box around the placed shapes, from the centre of the import. */
export function extentOf(placed: readonly PlacedShape[]): Extent {
  return {
    minX: Math.min(...placed.map((shape) => shape.at_mm[0] - shape.width_mm / 2)),
    minY: Math.min(...placed.map((shape) => shape.at_mm[1] - shape.height_mm / 2)),
    maxX: Math.max(...placed.map((shape) => shape.at_mm[0] + shape.width_mm / 2)),
    maxY: Math.max(...placed.map((shape) => shape.at_mm[1] + shape.height_mm / 2)),
  };
}

interface ImportPictureProps {
  readonly imported: OutlineImport;
  readonly placed: readonly PlacedShape[];
  readonly plain: boolean;
}

export function ImportPicture({ imported, placed, plain }: ImportPictureProps) {
  const box = useMemo(() => extentOf(placed), [placed]);
  if (placed.length === 0) return null;
  const [w, h] = [box.maxX - box.minX, box.maxY - box.minY];
  const pad = Math.max(w, h) * 0.04;
  const view = [box.minX - pad, -box.maxY - pad, w + 2 * pad, h + 2 * pad].map(short).join(' ');
  const [cx, cy] = [(imported.box.minX + imported.box.maxX) / 2, (imported.box.minY + imported.box.maxY) / 2];
  const left = plain ? imported.leftOut.flatMap((entry) => entry.lines) : [];
  return (
    <figure className="check-picture">
      <svg viewBox={view} role="img" aria-label={`${placed.length} outlines`}>
        {placed.map((shape) => (
          <path
            key={shape.name}
            className="check-outline"
            d={ringsPath(shape.rings, shape.at_mm[0], shape.at_mm[1])}
            fillRule="evenodd"
          />
        ))}
        {left.map((line, index) => (
          <path key={index} className="check-left" d={path(line.flat(), false, -cx, -cy)} />
        ))}
      </svg>
      <figcaption data-testid="import-size">
        {formatMm(w)} × {formatMm(h)}
      </figcaption>
    </figure>
  );
}
