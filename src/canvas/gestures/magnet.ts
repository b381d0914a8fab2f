/**
 * What pulls at parts while they are dragged. The field is taken once, as the drag begins; Alt or Ctrl suspends it, and
 * where nothing pulls the drag keeps to its steps. Reach in screen px, platform millimetres.
 */
import { boxUnion } from '../../geometry/region';
import type { Box } from '../../geometry/types';
import type { PartId } from '../../layout/types';
import { roundMm } from '../../units/round';
import type { Mm, PlatePoint } from '../../units/types';
import type { Division } from '../../zoning/types';
import { divisionAt } from '../layerAt';
import { marksOf, pull, type MagnetField } from '../magnetism';
import { footprintBox } from '../plan/items';
import { snapMm, type Modifiers } from '../snapping';
import type { Magnet, PlanHost } from './gesture';

const REACH_PX = 4;
/** More parts than this are too many to line up with by eye; only zone lines, edges and the grid pull then. */
const MOST_BOXES = 1000;
/** Lines that run within this of an axis count as upright or level. */
const STRAIGHT = 1e-9;

const upright = ({ lines }: Division): Mm[] =>
  lines.filter(({ ny }) => Math.abs(ny) < STRAIGHT).map(({ nx, c }) => c / nx);
const level = ({ lines }: Division): Mm[] =>
  lines.filter(({ nx }) => Math.abs(nx) < STRAIGHT).map(({ ny, c }) => c / ny);

/** Edges inside the margin, edges, and the middle. */
const edgesOf = (size: Mm, margin: Mm): Mm[] =>
  [-size / 2, margin - size / 2, 0, size / 2 - margin, size / 2].map((at) => at + 0);

function fieldOf({ bench }: PlanHost, moving: ReadonlySet<PartId>): MagnetField {
  const analysis = bench.analysis();
  const { height_mm, grid_mm } = bench.store.getState().view;
  const { platform } = analysis.layout.machine;
  const division = divisionAt(analysis, height_mm);
  const boxes = analysis.parts.filter(({ id }) => !moving.has(id)).map(footprintBox);
  return {
    boxes: boxes.length > MOST_BOXES ? [] : boxes,
    lines: {
      x: [...upright(division), ...edgesOf(platform.width_mm, platform.margin_mm)],
      y: [...level(division), ...edgesOf(platform.depth_mm, platform.margin_mm)],
    },
    spacing_mm: analysis.layout.limits.spacing_mm,
    grid_mm,
  };
}

const moved = (box: Box, dx: Mm, dy: Mm): Box => ({
  minX: box.minX + dx,
  minY: box.minY + dy,
  maxX: box.maxX + dx,
  maxY: box.maxY + dy,
});

/** The pull on parts that stand where they stand now; null where snapping is off. */
export function createMagnet(host: PlanHost, ids: readonly PartId[]): Magnet | null {
  const { bench, ui } = host;
  const { snapping, locked } = bench.store.getState().view;
  const boxes = bench
    .analysis()
    .parts.filter(({ id }) => ids.includes(id) && !locked.includes(id))
    .map(footprintBox);
  if (!snapping || boxes.length === 0) return null;
  const start = boxes.reduce(boxUnion);
  const field = fieldOf(host, new Set(ids));
  return (from: PlatePoint, to: PlatePoint, held: Modifiers): PlatePoint => {
    const stepped = { x: snapMm(to.x, held), y: snapMm(to.y, held) };
    if (held.alt || held.ctrl) {
      ui.setState({ marks: null });
      return stepped;
    }
    const by = pull(field, moved(start, to.x - from.x, to.y - from.y), to, REACH_PX / host.camera().pxPerMm);
    const rest = {
      x: by.x === null ? stepped.x : roundMm(to.x + by.x),
      y: by.y === null ? stepped.y : roundMm(to.y + by.y),
    };
    ui.setState({ marks: marksOf(field, moved(start, rest.x - from.x, rest.y - from.y)) });
    return rest;
  };
}
