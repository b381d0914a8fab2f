/**
 * The free hand: what a press takes hold of, what a click chooses, what the pointer lights up on its way.
 */
import type { PartId } from '../../layout/types';
import type { Hover } from '../../store/types';
import { divisionAt, layerFiguresAt } from '../layerAt';
import { partAt, seamAt, targetAt, type Target } from '../plan/hit';
import { lineGesture, moveGesture } from './edits';
import type { Gesture, Input, PlanHost } from './gesture';
import type * as Box from './box';
import type * as Copying from './copying';
import type * as Zones from './zones';

const toggled = (selection: readonly PartId[], id: PartId): readonly PartId[] =>
  selection.includes(id) ? selection.filter((other) => other !== id) : [...selection, id];

const layerOf = ({ bench }: PlanHost) =>
  layerFiguresAt(bench.analysis(), bench.store.getState().view.height_mm);

/** A click: the seam under it shows its figures, and the part under it is the one selected. */
const click = (host: PlanHost, at: Input, wasSelected: boolean): void => {
  const { bench, ui } = host;
  const analysis = bench.analysis();
  const { selection } = bench.store.getState().view;
  const layer = layerOf(host);
  const seam = layer?.seams[seamAt(layer, at.at, host.camera().pxPerMm)];
  const seamPart = seam ? analysis.layout.parts[seam.part]?.id : undefined;
  ui.setState({ seam: seamPart ? { part: seamPart, at: at.at } : null });
  const part = seamPart ?? partAt(analysis, selection, at.at, host.camera().pxPerMm);
  if (part === null) return;
  if (!at.held.shift) bench.setView({ selection: [part] });
  else if (wasSelected) bench.setView({ selection: toggled(selection, part) });
};

export type ZoneTools = Pick<typeof Zones, 'moveZoneGesture'> &
  Pick<typeof Box, 'boxGesture'> &
  Pick<typeof Copying, 'copyGesture'>;

const pressPart = (host: PlanHost, start: Input, part: PartId, tools: ZoneTools | null): Gesture => {
  const { bench } = host;
  const { selection } = bench.store.getState().view;
  const wasSelected = selection.includes(part);
  const ids = wasSelected ? selection : start.held.shift ? [...selection, part] : [part];
  if (!wasSelected) bench.setView({ selection: ids });
  const drag = start.held.alt && tools !== null ? tools.copyGesture : moveGesture;
  return drag(host, start, part, ids, (at) => click(host, at, wasSelected));
};

/** An outline is chosen by the first press and moved by the next, so that no slip shifts a zone. */
const pressZone = (host: PlanHost, start: Input, zone: number, tools: ZoneTools | null): Gesture | null => {
  const { bench } = host;
  if (tools !== null && bench.store.getState().view.activeZone === zone)
    return tools.moveZoneGesture(host, start, zone, (at) => click(host, at, true));
  bench.setView({ activeZone: zone });
  return tools && tools.boxGesture(host, start);
};

/** What a press with the free hand begins; null where its code has not come yet. */
export const pressSelect = (host: PlanHost, start: Input, tools: ZoneTools | null): Gesture | null => {
  const { bench, ui } = host;
  const { view } = bench.store.getState();
  const target = targetAt(bench.analysis(), view, start.at, host.camera().pxPerMm);
  if (target.kind === 'lines') {
    const { lines } = divisionAt(bench.analysis(), view.height_mm);
    bench.setView({ activeLine: lines.indexOf(target.lines[0]) });
    return lineGesture(host, start, target.lines, (at) => click(host, at, true));
  }
  if (target.kind === 'part') return pressPart(host, start, target.part, tools);
  if (target.kind === 'zone') return pressZone(host, start, target.zone, tools);
  ui.setState({ seam: null });
  if (view.activeZone !== null) bench.setView({ activeZone: null });
  return tools && tools.boxGesture(host, start);
};

const lineCursor = (target: Extract<Target, { kind: 'lines' }>): string => {
  if (target.lines.length > 1) return 'move';
  const { nx, ny } = target.lines[0];
  if (Math.abs(nx) > 0.92) return 'col-resize';
  if (Math.abs(ny) > 0.92) return 'row-resize';
  return nx * ny > 0 ? 'nesw-resize' : 'nwse-resize';
};

const cursorOf = (target: Target): string => {
  if (target.kind === 'lines') return lineCursor(target);
  if (target.kind === 'zone') return 'pointer';
  return target.kind === 'part' ? 'move' : 'default';
};

const sameHover = (a: Hover | null, b: Hover | null): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Lights up the seam or part under the pointer and shows what a press would do. */
export const hoverSelect = (host: PlanHost, input: Input): void => {
  const { bench, ui } = host;
  const analysis = bench.analysis();
  const { view } = bench.store.getState();
  const zoom = host.camera().pxPerMm;
  const target = targetAt(analysis, view, input.at, zoom);
  const seam = seamAt(layerOf(host), input.at, zoom);
  const part = partAt(analysis, view.selection, input.at, zoom);
  const hover: Hover | null =
    seam >= 0 ? { kind: 'seam', seam } : part === null ? null : { kind: 'part', part };
  if (!sameHover(hover, view.hover)) bench.setView({ hover });
  const cursor = cursorOf(target);
  if (ui.getState().cursor !== cursor) ui.setState({ cursor });
};
