/** Names as drawings and meshes bring them become ids that a layout accepts; marks by Unicode Standard Annex 9 [memory]. */
import { expect, test } from 'vitest';
import { shapeStem } from '../../src/commands/operations/names';
import { freeName } from '../../src/import/nest';
import { isId, isText } from '../../src/layout/ids';

const TURNED = ['X\u202E10P', 'valve\u2067 block\u2069', '\u200Fimpeller', 'tab\tand\u061C end'];

test.each(TURNED)('%j is no id and no text of a layout', (name) => {
  expect(isId(name)).toBe(false);
  expect(isText(name)).toBe(false);
});

test.each(TURNED)('%j gives a shape of a drawing, and a new shape of a plate, a name that is one', (name) => {
  expect(isId(freeName(name, new Map()))).toBe(true);
  expect(isId(shapeStem(name))).toBe(true);
});

test('letters that are written from the right are names like any other', () => {
  expect(isId('דחף')).toBe(true);
  expect(shapeStem('מדחף')).toBe('מדחף');
});
