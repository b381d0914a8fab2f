/**
 * The words of the library's lists: what an entry is, when it was saved, where the plate's copy differs.
 */
import { keyWord } from '../../panels/keyWords';
import { t, type Text } from '../../language/index';
import type { Difference } from '../../store/library/differences';
import type { EntryHead, EntryKind, FactsOf } from '../../store/library';
import { formatField, formatMm, NARROW_SPACE } from '../../units/format';

interface KindWords {
  readonly many: Text;
  /** Labels the field of the name. */
  readonly named: Text;
  /** Of the button that puts an entry on the workbench. */
  readonly use: Text;
  readonly save: Text;
  readonly none: Text;
  /** Heads the column that compares. */
  readonly beside: Text;
}
export const KIND_WORDS: Readonly<Record<EntryKind, KindWords>> = {
  layout: {
    many: 'Layouts',
    named: 'Name of the layout in the library',
    use: 'Open',
    save: 'Save the open layout as',
    none: 'No layout is kept yet. Save the open one above.',
    beside: 'open layout',
  },
  machine: {
    many: 'Machines',
    named: 'Name of the machine in the library',
    use: 'Use',
    save: 'Save the plate’s machine as',
    none: 'No machine is kept yet. Save the plate’s above.',
    beside: 'the plate’s machine',
  },
  process: {
    many: 'Processes',
    named: 'Name of the process in the library',
    use: 'Use',
    save: 'Save the plate’s process as',
    none: 'No process is kept yet. Save the plate’s above.',
    beside: 'the plate’s process',
  },
  shape: {
    many: 'Shapes',
    named: 'Name of the shape in the library',
    use: 'Place one',
    save: 'Save the shape',
    none: 'No shape is kept yet. Choose one of the plate’s above.',
    beside: 'on the plate',
  },
};

export interface Column {
  readonly title: Text;
  readonly number?: boolean;
  text(head: EntryHead): string;
}
/** A column that reads the facts of one kind; the heads of a list are all of that kind. */
const fact = <K extends EntryKind>(
  title: Text,
  text: (facts: FactsOf[K]) => string,
  number = true,
): Column => ({
  title,
  number,
  text: ({ facts }) => text(facts as FactsOf[K]),
});

const box = (...sides: readonly number[]): string => `${sides.map(formatField).join(' × ')}${NARROW_SPACE}mm`;

export const COLUMNS: Readonly<Record<EntryKind, readonly Column[]>> = {
  layout: [
    fact<'layout'>('parts', ({ parts }) => String(parts)),
    fact<'layout'>('machine', ({ machine }) => machine, false),
  ],
  machine: [
    fact<'machine'>('lasers', ({ lasers }) => String(lasers)),
    fact<'machine'>('platform, height', ({ width_mm, depth_mm, height_mm }) =>
      box(width_mm, depth_mm, height_mm),
    ),
  ],
  process: [
    fact<'process'>('layer', ({ layer_mm }) => formatMm(layer_mm)),
    fact<'process'>('hatch', ({ hatch_mm }) => formatMm(hatch_mm)),
    fact<'process'>('speed', ({ speed_mm_s }) => `${formatField(speed_mm_s)}${NARROW_SPACE}mm/s`),
  ],
  shape: [
    fact<'shape'>('size', ({ width_mm, depth_mm, height_mm }) => box(width_mm, depth_mm, height_mm)),
    fact<'shape'>('slabs', ({ slabs }) => String(slabs)),
  ],
};

/** "revision B, released"; '' where an entry has none. */
export function revisionText(head: EntryHead): string {
  const revision = head.kind === 'layout' ? head.facts.revision : null;
  return revision ? t('revision {name}, {state}', { name: revision.name, state: t(revision.state) }) : '';
}

const two = (n: number): string => String(n).padStart(2, '0');
/** Local time, "2026-11-25 20:57": sorts as it reads, in every country. */
export function savedText(saved_ms: number): string {
  const at = new Date(saved_ms);
  const day = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `${day} ${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** Endings of keys and the units they stand for. */
const UNITS: readonly (readonly [ending: string, unit: string])[] = [
  ['_g_cm3', 'g/cm³'],
  ['_mm_s', 'mm/s'],
  ['_laserH', 'laser-h'],
  ['_mm', 'mm'],
  ['_ms', 'ms'],
  ['_deg', '°'],
  ['_s', 's'],
  ['_l', 'l'],
  ['_W', 'W'],
];

/** "lasers", "L2", "power_W" → "L2 power", "W". */
function called(path: readonly string[]): { readonly words: string; readonly unit: string } {
  const last = path.at(-1) ?? '';
  const [ending, unit] = UNITS.find(([end]) => last.endsWith(end)) ?? ['', ''];
  const shown = path.length > 1 && path[0] === 'lasers' ? path.slice(1) : path;
  const keys = [...shown.slice(0, -1), last.slice(0, last.length - ending.length)];
  return { words: keys.map(keyWord).join(' '), unit };
}

function shownValue(value: unknown, unit: string): string {
  if (value === undefined || value === null) return t('none');
  if (typeof value === 'number')
    return `${formatField(value)}${unit === '°' || unit === '' ? '' : NARROW_SPACE}${unit}`;
  if (typeof value === 'boolean') return t(value ? 'yes' : 'no');
  if (typeof value === 'string') return keyWord(value);
  if (Array.isArray(value) && value.length > 0 && value.every((item) => typeof item === 'number'))
    return `(${value.map(formatField).join(', ')})${NARROW_SPACE}${unit}`;
  if (Array.isArray(value))
    return value.length === 0 ? t('none') : t('{count} listed', { count: value.length });
  return t('stated');
}

/** "layer 0.03 mm, here 0.06 mm": what the plate has, then what the entry has. */
export function differenceText({ path, entry, plate }: Difference): string {
  const { words, unit } = called(path);
  const [here, there] = [shownValue(entry, unit), shownValue(plate, unit)];
  return here === there
    ? t('{words} differs', { words })
    : t('{words} {there}, here {here}', { words, there, here });
}

const MOST_SHOWN = 12;
/** The first differences in words, and how many more there are. */
export function differencesText(all: readonly Difference[]): string {
  const shown = all.slice(0, MOST_SHOWN).map(differenceText);
  const more = all.length - shown.length;
  return [...shown, ...(more > 0 ? [t('and {more} more', { more })] : [])].join('; ');
}
