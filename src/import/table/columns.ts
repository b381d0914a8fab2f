/**
 * What the columns of a table of parts hold: by their headings, English or German, with a unit behind ("x_mm", "x [in]"),
 * or by their position. Units: how many millimetres (degrees for a turn) one of the column stands for.
 */
import type { Text } from '../../language/index';
import { parseLength } from '../../units/parse';

export type TableField = 'id' | 'shape' | 'x' | 'y' | 'turn' | 'laser' | 'seams' | 'timeFactor';
export interface Column {
  readonly field: TableField | null;
  /** null where the table has no headings. */
  readonly heading: string | null;
  /** mm per unit of the heading; 1 where it names none. */
  readonly scale: number;
}

/** In the order that a table without headings has them. */
export const TABLE_FIELDS: readonly TableField[] = [
  'id',
  'shape',
  'x',
  'y',
  'turn',
  'laser',
  'seams',
  'timeFactor',
];
export const FIELD_NAMES: Readonly<Record<TableField, Text>> = {
  id: 'id ¦ column',
  shape: 'shape ¦ column',
  x: 'x ¦ column',
  y: 'y ¦ column',
  turn: 'turn ¦ column',
  laser: 'laser ¦ column',
  seams: 'seams ¦ column',
  timeFactor: 'time factor ¦ column',
};

const HEADINGS: Readonly<Record<TableField, readonly string[]>> = {
  id: [
    'id',
    'nr',
    'no',
    'number',
    'nummer',
    'part',
    'part id',
    'part no',
    'part number',
    'part name',
    'name',
  ].concat(
    ['teil', 'teil nr', 'teilenummer', 'teilnummer', 'bauteil', 'bauteil nr', 'bauteilnummer'],
    ['bezeichnung', 'pos', 'pos nr'],
  ),
  shape: ['shape', 'form', 'geometry', 'geometrie', 'outline', 'kontur', 'type', 'typ', 'model', 'modell'],
  x: ['x', 'x position', 'position x', 'x pos', 'pos x', 'at x', 'x coordinate', 'x koordinate'],
  y: ['y', 'y position', 'position y', 'y pos', 'pos y', 'at y', 'y coordinate', 'y koordinate'],
  turn: ['turn', 'turned', 'rotation', 'angle', 'drehung', 'drehwinkel', 'winkel', 'gedreht'],
  laser: ['pinned', 'pin', 'pinned laser', 'laser', 'laser id', 'laser nr', 'laser no', 'fester laser'],
  seams: ['seams', 'seam', 'nähte', 'naht', 'naehte', 'nähte erlaubt'],
  timeFactor: ['time factor', 'timefactor', 'factor', 'zeitfaktor', 'zeit faktor', 'faktor'],
};
/** The column of the laser that exposes yields to the one of the pin. */
const PIN = ['pinned', 'pin', 'pinned laser', 'fester laser'];
const LENGTHS: readonly (TableField | null)[] = ['x', 'y'];
const DEGREES = ['deg', 'grad', '°', 'degrees'];
const UNITS: Readonly<Record<string, string>> = { zoll: 'in', '"': 'in', '″': 'in', μm: 'µm' };

interface Heading {
  readonly name: string;
  readonly field: TableField | null;
  readonly scale: number;
}

const fieldOf = (name: string): TableField | null =>
  TABLE_FIELDS.find((field) => HEADINGS[field].includes(name)) ?? null;

function unitScale(field: TableField | null, unit: string): number | null {
  if (field === 'turn') return DEGREES.includes(unit) ? 1 : null;
  if (!LENGTHS.includes(field)) return null;
  const read = parseLength(`1 ${UNITS[unit] ?? unit}`);
  return read.ok ? read.value : null;
}

/** A heading without signs, and the unit behind its name. Nothing is understood where the unit is not. */
function readHeading(text: string): Heading {
  const name = text
    .normalize('NFC')
    .toLowerCase()
    .replace(/[^\p{L}\p{N}°"″]+/gu, ' ')
    .trim();
  const whole = fieldOf(name);
  if (whole !== null) return { name, field: whole, scale: 1 };
  const [, front = '', unit = ''] = /^(.*?) ?([^ \d°"″]+|[°"″])$/.exec(name) ?? [];
  const field = fieldOf(front.replace(/ in$/, ''));
  const scale = unitScale(field, unit);
  return scale === null ? { name, field: null, scale: 1 } : { name, field, scale };
}

const isNumber = (cell: string): boolean => /^[+-]?[\d.,]+$/.test(cell);

/** The columns that the first row names; null where it is a row of values. */
export function headingColumns(cells: readonly string[]): readonly Column[] | null {
  const headings = cells.map(readHeading);
  const known = headings.filter(({ field }) => field !== null).length;
  if (known === 0 || (known === 1 && cells.some(isNumber))) return null;
  const pinned = headings.some(({ name }) => PIN.includes(name));
  const taken = new Set<TableField>();
  return headings.map(({ name, field, scale }, i) => {
    const second =
      field !== null && (taken.has(field) || (field === 'laser' && pinned && !PIN.includes(name)));
    if (field !== null && !second) taken.add(field);
    return { field: second ? null : field, heading: cells[i]!, scale };
  });
}

/** The columns of a table without headings. */
export const positionColumns = (count: number): readonly Column[] =>
  Array.from({ length: count }, (_, i) => ({ field: TABLE_FIELDS[i] ?? null, heading: null, scale: 1 }));
