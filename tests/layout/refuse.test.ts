// What is malformed is refused: one sentence with what was found, where, and what is accepted.
import { describe, expect, test } from 'vitest';
import { messageAdvice, messageText } from '../../src/layout/messages';
import { readLayout, readLayoutValue } from '../../src/layout/read';
import type { Fault } from '../../src/layout/result';
import { changed, sample } from './sample';

function fault(json: unknown): Fault {
  const result = readLayoutValue(json);
  if (result.ok) throw new Error('the layout was accepted');
  return result.fault;
}
const sentence = (found: Fault): string => messageText(found.code, found.params);

// One row per kind of malformed file: the change, the code, and words the sentence has to hold.
const refusals: readonly [string, readonly (string | number)[], unknown, string, readonly string[]][] = [
  ['wrong format', ['format'], 'something', 'layout-wrong-format', ['"something"']],
  ['newer version', ['version'], 4, 'layout-newer-version', ['4']],
  ['version 0', ['version'], 0, 'layout-wrong-version', ['0']],
  ['version as text', ['version'], '1', 'layout-wrong-version', ['"1"']],
  ['missing version', ['version'], undefined, 'layout-wrong-version', ['missing']],
  ['missing key', ['process', 'hatch_mm'], undefined, 'layout-missing-key', ['hatch_mm', 'process']],
  ['unknown key', ['process', 'hatch'], 1, 'layout-unknown-key', ['"hatch"', 'process']],
  ['unknown key at the root', ['colour'], 'red', 'layout-unknown-key', ['"colour"']],
  ['unknown key in a part', ['parts', 1, 'angle'], 3, 'layout-unknown-key', ['"angle"', 'parts[1]']],
  ['1e300', ['parts', 0, 'at_mm'], [1e300, 0], 'layout-wrong-value', ['parts[0].at_mm[0]', '1e+300']],
  [
    '1e300 in a ring',
    ['shapes', 'block', 'slabs', 1, 'rings', 0],
    { circle_mm: [0, 0, 1e300] },
    'layout-wrong-value',
    ['shapes.block.slabs[1].rings[0].circle_mm[2]', '1e+300'],
  ],
  ['NaN', ['process', 'layer_mm'], NaN, 'layout-wrong-value', ['process.layer_mm', 'NaN']],
  ['infinity', ['process', 'speed_mm_s'], Infinity, 'layout-wrong-value', ['process.speed_mm_s', 'Infinity']],
  [
    'null where a number belongs',
    ['process', 'speed_mm_s'],
    null,
    'layout-wrong-value',
    ['process.speed_mm_s', 'null'],
  ],
  [
    'number as text',
    ['machine', 'buildHeight_mm'],
    '360',
    'layout-wrong-value',
    ['machine.buildHeight_mm', '"360"'],
  ],
  [
    'negative size',
    ['machine', 'platform', 'width_mm'],
    -340,
    'layout-wrong-value',
    ['machine.platform.width_mm', '-340'],
  ],
  [
    'negative radius',
    ['shapes', 'block', 'slabs', 1, 'rings', 0],
    { circle_mm: [0, 0, -3] },
    'layout-wrong-value',
    ['-3'],
  ],
  ['zero layer', ['process', 'layer_mm'], 0, 'layout-wrong-value', ['process.layer_mm']],
  ['half a contour', ['process', 'contours'], 1.5, 'layout-wrong-value', ['process.contours', '1.5']],
  ['unknown word', ['parts', 0, 'seams'], 'some', 'layout-wrong-value', ['parts[0].seams', '"some"']],
  ['unknown strategy', ['zoning', 'strategy'], 'rings', 'layout-wrong-value', ['zoning', '"rings"']],
  ['list instead of shapes', ['shapes'], [], 'layout-wrong-value', ['shapes', 'a list of 0']],
  ['list instead of limits', ['limits'], [], 'layout-wrong-value', ['limits', 'a list of 0']],
  [
    'two points',
    ['shapes', 'block', 'slabs', 0, 'rings', 0],
    [
      [0, 0],
      [1, 0],
    ],
    'layout-wrong-value',
    ['shapes.block.slabs[0].rings[0]', 'a list of 2'],
  ],
  [
    'three points, two different',
    ['shapes', 'block', 'slabs', 0, 'rings', 0],
    [
      [0, 0],
      [1, 0],
      [0, 0],
    ],
    'layout-few-points',
    ['2 different'],
  ],
  [
    'points on a line',
    ['shapes', 'block', 'slabs', 0, 'rings', 0],
    [
      [0, 0],
      [1, 1],
      [5, 5],
    ],
    'layout-zero-area',
    ['shapes.block.slabs[0].rings[0]'],
  ],
  [
    'there and back again',
    ['shapes', 'block', 'slabs', 0, 'rings', 0],
    [
      [0, 0],
      [9, 0],
      [9, 9],
      [9, 0],
    ],
    'layout-zero-area',
    ['shapes.block'],
  ],
  [
    'point of three numbers',
    ['shapes', 'block', 'slabs', 0, 'rings', 0, 1],
    [1, 2, 3],
    'layout-wrong-value',
    ['rings[0][1]'],
  ],
  [
    'ring of numbers',
    ['shapes', 'block', 'slabs', 0, 'rings', 0],
    [1, 2, 3],
    'layout-wrong-value',
    ['rings[0][0]'],
  ],
  [
    'slabs that descend',
    ['shapes', 'block', 'slabs', 1, 'to_mm'],
    20,
    'layout-not-ascending',
    ['shapes.block.slabs[1].to_mm', '20'],
  ],
  ['no slab', ['shapes', 'block', 'slabs'], [], 'layout-wrong-value', ['shapes.block.slabs']],
  [
    'no outline at all',
    ['shapes', 'block', 'slabs'],
    [{ to_mm: 3, rings: [] }],
    'layout-empty-shape',
    ['shapes.block'],
  ],
  ['duplicate part', ['parts', 1, 'id'], 'P01', 'layout-duplicate-id', ['parts[1]', '"P01"']],
  [
    'duplicate laser',
    ['machine', 'lasers', 3, 'id'],
    'L1',
    'layout-duplicate-id',
    ['machine.lasers[3]', '"L1"'],
  ],
  [
    'unknown shape',
    ['parts', 0, 'shape'],
    'toString',
    'layout-unknown-shape',
    ['parts[0].shape', '"toString"'],
  ],
  [
    'unknown laser of a part',
    ['parts', 0, 'laser'],
    'L9',
    'layout-unknown-laser',
    ['parts[0].laser', '"L9"'],
  ],
  [
    'unknown laser of a zone',
    ['zoning', 'lasers', 2],
    'L9',
    'layout-unknown-laser',
    ['zoning.lasers[2]', '"L9"'],
  ],
  ['laser count', ['zoning', 'lasers'], ['L1', 'L2'], 'layout-laser-count', ['2 lasers for 4 zones']],
  [
    'laser count of strips',
    ['zoning'],
    { strategy: 'strips', run_deg: 90, lines_mm: [0, 20], lasers: ['L1', 'L2'] },
    'layout-laser-count',
    ['2 lasers for 3 zones'],
  ],
  [
    'lines that do not ascend',
    ['zoning'],
    { strategy: 'strips', run_deg: 90, lines_mm: [0, 20, 20], lasers: ['L1', 'L2', 'L1', 'L2'] },
    'layout-not-ascending',
    ['zoning.lines_mm[2]'],
  ],
  [
    'run of 180°',
    ['zoning'],
    { strategy: 'strips', run_deg: 180, lines_mm: [0], lasers: ['L1', 'L2'] },
    'layout-wrong-value',
    ['zoning.run_deg', '180'],
  ],
  [
    'thirteen strips',
    ['zoning'],
    {
      strategy: 'strips',
      run_deg: 0,
      lines_mm: [...Array(12).keys()],
      lasers: [...Array(13)].map(() => 'L1'),
    },
    'layout-wrong-value',
    ['zoning.lines_mm'],
  ],
  [
    'laser list in a whole field',
    ['zoning'],
    { strategy: 'wholeField', lasers: ['L1'] },
    'layout-unknown-key',
    ['"lasers"'],
  ],
  [
    'zoning of version 2',
    ['zoning'],
    [{ from_mm: 0, zoning: { strategy: 'wholeField' } }],
    'layout-wrong-value',
    ['zoning'],
  ],
  ['no laser', ['machine', 'lasers'], [], 'layout-wrong-value', ['machine.lasers']],
  [
    '32 lasers',
    ['machine', 'lasers'],
    [...Array(32).keys()].map((i) => ({ id: `L${i}`, power_W: 400, foot_mm: [0, 0], workingHeight_mm: 500 })),
    'layout-wrong-value',
    ['machine.lasers', '32'],
  ],
  ['blank id', ['parts', 0, 'id'], '', 'layout-wrong-value', ['parts[0].id']],
  ['control character in an id', ['parts', 0, 'id'], 'P\u0007', 'layout-wrong-value', ['parts[0].id']],
  ['direction mark in an id', ['parts', 0, 'id'], 'X\u202E10P', 'layout-wrong-value', ['parts[0].id']],
  ['direction mark in a name', ['name'], 'Plate \u202Edesaeler', 'layout-wrong-value', ['name']],
  ['half a character', ['name'], 'x\ud800', 'layout-wrong-value', ['name']],
];

describe('what is malformed is refused with what, where and what is accepted', () => {
  test.each(refusals)('%s', (_, path, replacement, code, words) => {
    const found = fault(changed(path, replacement));
    expect(found.code).toBe(code);
    for (const word of words) expect(sentence(found)).toContain(word);
    expect(`${sentence(found)} ${messageAdvice(found.code, found.params)}`).not.toMatch(/[?{}]|undefined/);
  });

  test.each(['__proto__', 'constructor', 'prototype'])('a shape called %s', (id) => {
    const text = JSON.stringify(sample()).replaceAll('"block"', JSON.stringify(id));
    const result = readLayout(text);
    expect(result.ok ? null : result.fault.code).toBe('layout-wrong-value');
  });
});
