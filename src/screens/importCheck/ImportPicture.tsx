/**
 * What was found in the file, as one drawing: outlines in ink, lines that were left out dash-dot in the warning colour,
 * with the size of the whole.
 */
import { t } from '../../language/index';
import { useMemo } from 'react';
import { ringFromLayout } from '../../geometry/ring';
import type { OutlineImport, PlacedShape } from '../../import/types';
import type { LayoutRing } from '../../layout/types';
import { formatMm } from '../../units/format';

const short = (value: number): string => String(Math.round(value * 1000) / 1000);

function path(points: ArrayLike<number>, close: boolean, dx = 0, dy = 0): string {
  let d = '';
  for (let i = 0; i < points.length; i += 2)
    d += `${i === 0 ? 'M' : 'L'}${short((points[i] ?? 0) + dx)} ${short(-(points[i + 1] ?? 0) - dy)}`;
  return close ? `${d}Z` : d;
}
/** A circle as two half circles, so that a small one is round too. */
function ringPath(ring: LayoutRing, dx: number, dy: number): string {
  if (!('circle_mm' in ring)) return path(ringFromLayout(ring), true, dx, dy);
  const [x, y, r] = ring.circle_mm;
  const half = (way: number): string => `a${short(r)} ${short(r)} 0 1 0 ${short(way)} 0`;
  return `M${short(x + dx - r)} ${short(-y - dy)}${half(2 * r)}${half(-2 * r)}Z`;
}
export const ringsPath = (rings: readonly LayoutRing[], dx = 0, dy = 0): string =>
  rings.map((ring) => ringPath(ring, dx, dy)).join('');

interface Extent {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Box around boxes; a point where a drawing holds nothing that can be placed. */
function around(boxes: readonly Extent[]): Extent {
  if (boxes.length === 0) return { minX: 0, minY: 0, maxX: 0, maxY: 0 };
  return boxes.reduce((all, box) => ({
    minX: Math.min(all.minX, box.minX),
    minY: Math.min(all.minY, box.minY),
    maxX: Math.max(all.maxX, box.maxX),
    maxY: Math.max(all.maxY, box.maxY),
  }));
}

/** Box around the placed shapes, from the centre of the import. */
export const extentOf = (placed: readonly PlacedShape[]): Extent =>
  around(
    placed.map(({ at_mm: [x, y], width_mm, height_mm }) => ({
      minX: x - width_mm / 2,
      minY: y - height_mm / 2,
      maxX: x + width_mm / 2,
      maxY: y + height_mm / 2,
    })),
  );

/** The page's sense of a box, with a margin of 4 %; a point gets a millimetre. */
function viewBoxOf({ minX, minY, maxX, maxY }: Extent): string {
  const pad = Math.max(maxX - minX, maxY - minY, 1) * 0.04;
  return [minX - pad, -maxY - pad, maxX - minX + 2 * pad, maxY - minY + 2 * pad].map(short).join(' ');
}

interface ImportPictureProps {
  readonly imported: OutlineImport;
  readonly placed: readonly PlacedShape[];
  readonly plain: boolean;
}

export function ImportPicture({ imported, placed, plain }: ImportPictureProps) {
  const box = useMemo(() => extentOf(placed), [placed]);
  const [w, h] = [box.maxX - box.minX, box.maxY - box.minY];
  const [cx, cy] = [(imported.box.minX + imported.box.maxX) / 2, (imported.box.minY + imported.box.maxY) / 2];
  const left = plain ? imported.leftOut.flatMap((entry) => entry.lines) : [];
  const gaps = plain ? imported.leftOut.flatMap((entry) => entry.places) : [];
  const ends = left
    .flat()
    .map(([x, y]): Extent => ({ minX: x - cx, minY: y - cy, maxX: x - cx, maxY: y - cy }));
  if (placed.length === 0 && left.length === 0) return null;
  const shown = around(placed.length === 0 ? ends : [box, ...ends]);
  return (
    <figure className="check-picture">
      <svg
        viewBox={viewBoxOf(shown)}
        role="img"
        aria-label={t('{placed} outlines, {left} lines left out', {
          placed: placed.length,
          left: left.length,
        })}
      >
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
        {gaps.map(([x, y], index) => (
          <path key={index} className="check-end" d={`M${short(x - cx)} ${short(cy - y)}h0`} />
        ))}
      </svg>
      <figcaption data-testid="import-size">
        {placed.length > 0 && `${formatMm(w)} × ${formatMm(h)}`}
        {placed.length > 0 && left.length > 0 && ', '}
        {left.length > 0 &&
          t(gaps.length > 0 ? 'dash-dot: left out; dots: ends that do not meet' : 'dash-dot: left out')}
      </figcaption>
    </figure>
  );
}
