/**
 * A small plan of one layer as vectors: platform with its front edge, zones, sections tinted and hatched by laser, cuts,
 * names. For pictures that stand side by side; nothing on it can be taken hold of. Plate mm turned over to screen px.
 */
import { memo } from 'react';
import type { Analysis, LayerFigures, Piece } from '../build/types';
import { boxOf } from '../geometry/region';
import type { Region } from '../geometry/types';
import type { Mm, Px } from '../units/types';
import { hatchSegments, hatchSpacing } from '../export/plan/hatching';
import { divisionAt, layerFiguresAt } from './layerAt';
import { GROUNDS, laserStyle, THICK_PX, THIN_PX, type Theme } from '../export/plan/palette';
import { planItems, type PartItem } from './plan/items';
import { useTheme } from './theme';

/** Room around the platform for its lines. */
const ROOM_PX: Px = 6;
/** Mean width of a letter; names hide on parts narrower than they are. */
const LETTER_PX: Px = 8;
const UNASSIGNED = { angle_deg: 45, spacing_px: 5 };

/** From the plate to the picture. */
interface Scale {
  readonly pxPerMm: number;
  readonly left_mm: Mm;
  readonly top_mm: Mm;
}

const at = ({ pxPerMm, left_mm, top_mm }: Scale, x: Mm, y: Mm): string =>
  `${(ROOM_PX + (x - left_mm) * pxPerMm).toFixed(2)} ${(ROOM_PX + (top_mm - y) * pxPerMm).toFixed(2)}`;

const outline = (region: Region, scale: Scale): string =>
  region
    .map((ring) => {
      const points: string[] = [];
      for (let i = 0; i < ring.length; i += 2) points.push(at(scale, ring[i], ring[i + 1]));
      return `M${points.join('L')}Z`;
    })
    .join('');

function hatch(region: Region, angle_deg: number, spacing_px: Px, scale: Scale): string {
  const lines = hatchSegments(region, angle_deg, hatchSpacing(spacing_px, scale.pxPerMm));
  let path = '';
  for (let i = 0; i < lines.length; i += 4)
    path += `M${at(scale, lines[i], lines[i + 1])}L${at(scale, lines[i + 2], lines[i + 3])}`;
  return path;
}

interface Drawn {
  readonly scale: Scale;
  readonly theme: Theme;
}

function PieceShape({ piece, scale, theme }: Drawn & { readonly piece: Piece }) {
  const style = piece.laser < 0 ? null : laserStyle(piece.laser, theme);
  const { angle_deg, spacing_px } = style?.hatching ?? UNASSIGNED;
  const { warning, sheet } = GROUNDS[theme];
  return (
    <>
      <path d={outline(piece.region, scale)} fill={style?.tint ?? sheet} fillRule="evenodd" />
      <path
        d={hatch(piece.region, angle_deg, spacing_px, scale)}
        stroke={style?.stroke ?? warning}
        strokeWidth={THIN_PX}
      />
    </>
  );
}

function PartShape({ item, scale, theme }: Drawn & { readonly item: PartItem }) {
  const { ink, line, sheet } = GROUNDS[theme];
  const below = item.section.length === 0;
  const edge = below ? line : ink;
  const box = boxOf(item.view.footprint);
  const [x, y] = at(scale, (box.minX + box.maxX) / 2, (box.minY + box.maxY) / 2).split(' ');
  return (
    <>
      {item.pieces.map((piece, i) => (
        <PieceShape key={i} piece={piece} scale={scale} theme={theme} />
      ))}
      <path
        d={outline(below ? item.view.footprint : item.section, scale)}
        stroke={edge}
        strokeWidth={THIN_PX}
        strokeDasharray={below ? '1 3' : undefined}
      />
      {item.seams.map(({ path }, i) => (
        <path key={i} d={`M${pairs(path, scale)}`} stroke={ink} strokeWidth={THICK_PX} />
      ))}
      {(box.maxX - box.minX) * scale.pxPerMm >= item.part.id.length * LETTER_PX && (
        <text
          x={x}
          y={Number(y) + 4}
          textAnchor="middle"
          fontSize={12}
          fill={below ? line : ink}
          stroke={sheet}
          strokeWidth={3}
          paintOrder="stroke"
        >
          {item.part.id}
        </text>
      )}
    </>
  );
}

function pairs(path: ArrayLike<number>, scale: Scale): string {
  const points: string[] = [];
  for (let i = 0; i < path.length; i += 2) points.push(at(scale, path[i]!, path[i + 1]!));
  return points.join('L');
}

interface ZonesProps extends Drawn {
  readonly analysis: Analysis;
  readonly height_mm: Mm;
}

/** Zones of one laser in its tint; what several may expose stays the ground's. */
function Zones({ analysis, height_mm, scale, theme }: ZonesProps) {
  return divisionAt(analysis, height_mm).zones.map(({ lasers, region }, i) => {
    const laser = 31 - Math.clz32(lasers);
    const single = lasers === 1 << laser;
    const { stroke, zoneTint } = laserStyle(laser, theme);
    return (
      <path
        key={i}
        d={outline(region, scale)}
        fill={single ? zoneTint : 'none'}
        stroke={single ? stroke : GROUNDS[theme].line}
        strokeWidth={THIN_PX}
        strokeDasharray="6 4"
      />
    );
  });
}

interface PictureProps {
  readonly analysis: Analysis;
  readonly height_mm: Mm;
  readonly width_px: Px;
  readonly name: string;
}

export const PlanPicture = memo(({ analysis, height_mm, width_px, name }: PictureProps) => {
  const theme = useTheme();
  const { width_mm, depth_mm } = analysis.layout.machine.platform;
  const pxPerMm = (width_px - 2 * ROOM_PX) / width_mm;
  const scale = { pxPerMm, left_mm: -width_mm / 2, top_mm: depth_mm / 2 };
  const height_px = depth_mm * pxPerMm + 2 * ROOM_PX;
  const layer: LayerFigures | null = layerFiguresAt(analysis, height_mm);
  const { sheet, ink } = GROUNDS[theme];
  const front = height_px - ROOM_PX;
  return (
    <svg
      className="plan-picture"
      width={width_px}
      height={height_px}
      role="img"
      aria-label={name}
      fill="none"
    >
      <rect
        x={ROOM_PX}
        y={ROOM_PX}
        width={width_px - 2 * ROOM_PX}
        height={depth_mm * pxPerMm}
        fill={sheet}
        stroke={ink}
      />
      <Zones analysis={analysis} height_mm={height_mm} scale={scale} theme={theme} />
      {planItems(analysis, layer).map((item) => (
        <PartShape key={item.part.id} item={item} scale={scale} theme={theme} />
      ))}
      <line
        x1={ROOM_PX}
        x2={width_px - ROOM_PX}
        y1={front}
        y2={front}
        stroke={ink}
        strokeWidth={2 * THICK_PX}
      />
    </svg>
  );
});
