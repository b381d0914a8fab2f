/**
 * Drags that change what stands on the plate: parts moved, zone lines. Each works on the present layout, so
 * nothing else that changed meanwhile is lost. Millimetres on the platform.
 */
import { t } from '../../language/index';
import { moveParts } from '../../commands/operations/parts';
import { setZoneLine } from '../../commands/operations/zoneLines';
import type { Layout, PartId } from '../../layout/types';
import { onShown, plateOf } from '../../store/shown';
import type { Mm, PlatePoint } from '../../units/types';
import { zoneLines } from '../../zoning/lines';
import type { ZoneLine } from '../../zoning/types';
import { snapMm, snapPoint } from '../snapping';
import { editGesture, type Gesture, type Input, type Magnet, type PlanHost } from './gesture';
import { mmWords, placeWords } from './words';

const partOf = (layout: Layout, id: PartId) => layout.parts.find((part) => part.id === id);

/** What a drag holds: the part that was grabbed, and all that go along. */
export interface Grip {
  readonly lead: PartId;
  readonly ids: readonly PartId[];
}

/**
 * Moves parts with the pointer; the one that was grabbed keeps to the steps, the others keep their distance. `take` is
 * called once the drag begins, inside its entry of history, and may say that other parts are moved instead.
 */
export const moveGesture = (
  host: PlanHost,
  start: Input,
  lead: PartId,
  ids: readonly PartId[],
  clicked: (at: Input) => void,
  take?: (label: string) => Grip,
): Gesture => {
  let grip: Grip = { lead, ids };
  const from = partOf(host.bench.store.getState().layout, lead)?.at_mm ?? [0, 0];
  let magnet: Magnet | null = null;
  let wanted: PlatePoint = { x: from[0], y: from[1] };
  const target = (to: Input): PlatePoint => {
    const free = { x: from[0] + to.at.x - start.at.x, y: from[1] + to.at.y - start.at.y };
    return magnet?.({ x: from[0], y: from[1] }, free, to.held) ?? snapPoint(free, to.held);
  };
  const several = { count: ids.length };
  const label =
    ids.length > 1
      ? t(take ? 'Copy {count} parts' : 'Move {count} parts', several)
      : t(take ? 'Copy {part}' : 'Move {part}', { part: lead });
  return editGesture(host, start, {
    label,
    begun: () => {
      if (take) grip = take(label);
      host.ui.setState({ moving: grip.ids });
      magnet = host.magnet?.(grip.ids) ?? null;
    },
    change: (layout, to) => {
      const at = partOf(layout, grip.lead)?.at_mm;
      wanted = target(to);
      return at ? moveParts(layout, grip.ids, wanted.x - at[0], wanted.y - at[1]) : layout;
    },
    words: (to) => [placeWords(wanted, to.held)],
    clicked,
  });
};

const lineName = ({ key }: ZoneLine): string => {
  if (key.kind === 'strip') return t('line {number}', { number: key.index + 1 });
  return key.kind === 'quadrantX' ? 'x' : 'y';
};
const sameKey = (a: ZoneLine['key'], b: ZoneLine['key']): boolean =>
  a.kind === b.kind && (a.kind !== 'strip' || (b.kind === 'strip' && a.index === b.index));

/** Moves one zone line, or both lines of the quadrants by their crossing point. */
export const lineGesture = (
  host: PlanHost,
  start: Input,
  lines: readonly ZoneLine[],
  clicked?: (at: Input) => void,
): Gesture => {
  const along = (line: ZoneLine, p: PlatePoint): Mm => line.nx * p.x + line.ny * p.y;
  const target = (line: ZoneLine, to: Input): Mm =>
    snapMm(line.c + along(line, to.at) - along(line, start.at), to.held);
  const present = (line: ZoneLine): Mm =>
    zoneLines(plateOf(host.bench).zoning).find((other) => sameKey(other.key, line.key))?.c ?? line.c;
  return editGesture(host, start, {
    label: lines.length > 1 ? t('Move the crossing point') : t('Move a zone line'),
    change: onShown(host.bench, (plate, to: Input) =>
      lines.reduce((so, line) => setZoneLine(so, line.key, target(line, to)), plate),
    ),
    words: (to) => [lines.map((line) => `${lineName(line)} ${mmWords(present(line), to.held)}`).join('  ')],
    clicked,
  });
};
