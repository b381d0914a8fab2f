// The border: what is refused and how, that nothing throws, what leaves for a layout.
import DxfParser, { type ILineEntity, type ICircleEntity, type IArcEntity } from 'dxf-parser';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readDocument } from '../../src/import/dxf/document';
import { finish, importProblems, placeImport, readOutlines } from '../../src/import/outlines';
import type { Placement } from '../../src/import/types';
import { MESSAGES, messageText } from '../../src/layout/messages';
import type { Fault } from '../../src/layout/result';
import { readLayoutValue } from '../../src/layout/read';
import { emptyLayout } from '../../src/layout/defaults';
import {
  SETTINGS,
  dxf,
  dxfCircle,
  dxfLine,
  dxfObject,
  fixture,
  leftOut,
  only,
  opened,
  refused,
  svg,
} from './drawing';

const FIXTURES = [
  'slotted-plate.dxf',
  'ring-inch.dxf',
  'no-units.dxf',
  'mirrored-blocks.dxf',
  'left-out.dxf',
  'broken.dxf',
  'gasket.svg',
  'angle.svg',
  'left-out.svg',
];

const told = ({ code, params }: Fault): { code: string; sentence: string } => ({
  code,
  sentence: messageText(code, params),
});

describe('refused files', () => {
  test.each([
    ['a picture', 'part.png', '\x89PNG\r\n', 'outlines-unknown-kind'],
    ['a layout file', 'plate.json', '{"format":"evenplate-layout"}', 'outlines-unknown-kind'],
    ['an empty file', 'part.svg', '', 'svg-broken'],
    ['XML cut off', 'part.svg', '<svg><path d="M0 0', 'svg-broken'],
    ['XML with crossed tags', 'part.svg', '<svg><g></svg></g>', 'svg-broken'],
    ['another vocabulary', 'part.svg', '<html><body/></html>', 'svg-no-root'],
    ['entities that multiply', 'bomb.svg', bomb(), 'svg-entities'],
    [
      'groups nested too deep',
      'deep.svg',
      `<svg>${'<g>'.repeat(5000)}${'</g>'.repeat(5000)}</svg>`,
      'outlines-too-deep',
    ],
    ['a drawing without areas', 'empty.svg', '<svg/>', 'outlines-empty'],
    ['binary DXF', 'part.dxf', 'AutoCAD Binary DXF\r\n\x1a\0', 'dxf-binary'],
    ['DXF cut off', 'broken.dxf', fixture('broken.dxf'), 'dxf-cut-off'],
    ['DXF with a word for a code', 'part.dxf', dxf('LINE\n8\n'), 'dxf-broken'],
    [
      'DXF with a word for a number',
      'part.dxf',
      dxf(dxfObject(0, 'LINE', 8, 'A', 10, 'abc')),
      'dxf-bad-number',
    ],
    [
      'DXF with an infinite number',
      'part.dxf',
      dxf(dxfObject(0, 'LINE', 8, 'A', 10, '1e999')),
      'dxf-bad-number',
    ],
    ['DXF without objects', 'part.dxf', dxf(''), 'outlines-empty'],
  ])('%s', (_, name, text, code) => {
    const result = readOutlines(name, text, SETTINGS);
    const fault = result.ok ? { code: 'accepted', sentence: '{}' } : told(result.fault);
    expect(fault.code).toBe(code);
    expect(fault.sentence).not.toMatch(/[{?}]/);
  });

  /** Ten entities, each ten times the one before: ten thousand million characters from a short file. */
  function bomb(): string {
    const lines = Array.from({ length: 10 }, (_, i) => `<!ENTITY a${i + 1} "${`&a${i};`.repeat(10)}">`);
    return `<?xml version="1.0"?><!DOCTYPE svg [<!ENTITY a0 "x">${lines.join('')}]><svg><text>&a10;</text></svg>`;
  }

  test('more than 100 million characters are refused before they are read', () => {
    expect(refused(' '.repeat(100_000_001), 'part.dxf')).toBe('outlines-too-large');
  });

  test('repetition that multiplies is stopped: use within use, block within block, rows of rows', () => {
    const levels = Array.from(
      { length: 20 },
      (_, i) => `<g id="g${i + 1}">${`<use href="#g${i}"/>`.repeat(10)}</g>`,
    );
    expect(
      refused(svg(`<defs><rect id="g0" width="1" height="1"/>${levels.join('')}</defs><use href="#g20"/>`)),
    ).toBe('outlines-too-much');
    const rows = dxfObject(0, 'INSERT', 8, 'A', 2, 'B', 10, 0, 20, 0, 70, 30000, 71, 30000, 44, 20, 45, 20);
    const block = dxfObject(0, 'BLOCK', 2, 'B', 10, 0, 20, 0) + dxfCircle(0, 0, 5) + dxfObject(0, 'ENDBLK');
    expect(refused(dxf(rows, { blocks: block }))).toBe('outlines-too-much');
  });

  test('an outline that crosses itself thousands of times is left out, one that does so a few times is put right', () => {
    const walk = (n: number): string =>
      svg(
        `<path d="M${Array.from({ length: n }, (_, i) => `${(i * 37) % 100} ${(i * i * 13) % 97}`).join('L')}z"/>`,
      );
    expect(leftOut(opened(walk(2000)))).toEqual({ broken: 1 });
    expect(opened(svg('<path d="M0 0L10 10L10 0L0 10z"/>')).repaired).toBe(1);
  });

  test('a harmless document type and a byte order mark are accepted', () => {
    const doctype =
      '<!DOCTYPE svg PUBLIC "-//W3C//DTD SVG 1.1//EN" "http://www.w3.org/Graphics/SVG/1.1/DTD/svg11.dtd">';
    expect(
      only(opened(`\uFEFF<?xml version="1.0"?>${doctype}${svg('<rect width="2" height="2"/>')}`)).area_mm2,
    ).toBeCloseTo(4, 9);
    expect(only(opened(`\uFEFF${dxf(dxfCircle(0, 0, 1))}`)).area_mm2).toBeCloseTo(Math.PI, 6);
  });

  test('line ends of every kind are read, and prefixed SVG', () => {
    for (const end of ['\r\n', '\r', '\n'])
      expect(only(opened(dxf(dxfCircle(0, 0, 1)).replaceAll('\n', end), {}, 'part.dxf')).holes).toBe(0);
    const prefixed =
      '<s:svg xmlns:s="http://www.w3.org/2000/svg" width="9mm" viewBox="0 0 9 9"><s:rect width="3" height="3"/></s:svg>';
    expect(only(opened(prefixed)).area_mm2).toBeCloseTo(9, 9);
  });
});

test('a second DXF reader finds the same lines, arcs and circles (npm dxf-parser)', () => {
  for (const name of ['slotted-plate.dxf', 'ring-inch.dxf', 'no-units.dxf', 'left-out.dxf']) {
    const other = new DxfParser().parse(fixture(name));
    const own = finish(readDocument(fixture(name)));
    if (other === null || !own.ok) throw new Error(name);
    const theirs = other.entities.flatMap((entity) => {
      if (entity.type === 'LINE') return (entity as ILineEntity).vertices.map(({ x, y }) => `LINE ${x} ${y}`);
      if (entity.type !== 'ARC' && entity.type !== 'CIRCLE') return [];
      const { center, radius } = entity as ICircleEntity | IArcEntity;
      return [`${entity.type} ${center.x} ${center.y} ${radius}`];
    });
    const ours = own.value.entities.flatMap(({ type, codes, numbers }) => {
      const at = (code: number): number => numbers[codes.indexOf(code)];
      if (type === 'LINE') return [`LINE ${at(10)} ${at(20)}`, `LINE ${at(11)} ${at(21)}`];
      return type === 'ARC' || type === 'CIRCLE' ? [`${type} ${at(10)} ${at(20)} ${at(40)}`] : [];
    });
    expect(ours).toEqual(theirs);
    expect(own.value.insUnits).toBe(other.header.$INSUNITS);
  }
});

describe('nothing throws', () => {
  const mutations = fc.array(
    fc.record({
      at: fc.double({ min: 0, max: 1, noNaN: true }),
      cut: fc.nat(40),
      put: fc.oneof(
        fc.string({ maxLength: 12 }),
        fc.constantFrom(
          '\n0\n',
          'NaN',
          '1e308',
          '-',
          '<g>',
          '/>',
          '"',
          '0\nENDSEC\n',
          '\n',
          '&x;',
          '0\nINSERT\n2\nANGLE\n',
        ),
      ),
    }),
    { minLength: 1, maxLength: 6 },
  );
  const damage = (text: string, changes: readonly { at: number; cut: number; put: string }[]): string =>
    changes.reduce((now, { at, cut, put }) => {
      const i = Math.floor(at * now.length);
      return now.slice(0, i) + put + now.slice(i + cut);
    }, text);

  test.each(FIXTURES)('however %s is damaged, it is read or refused in a sentence', (name) => {
    const text = fixture(name);
    fc.assert(
      fc.property(mutations, (changes) => {
        const result = readOutlines(name, damage(text, changes), SETTINGS);
        expect(result.ok || Object.hasOwn(MESSAGES, result.fault.code)).toBe(true);
        for (const shape of result.ok ? placeImport(result.value) : [])
          expect(shape.area_mm2).toBeGreaterThan(0);
      }),
      { seed: 20261127, numRuns: 100 },
    );
  });

  test('random text is read or refused', () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 300, unit: 'binary' }),
        fc.constantFrom('a.svg', 'a.dxf', 'a'),
        (text, name) => {
          expect(() => readOutlines(name, text, SETTINGS)).not.toThrow();
        },
      ),
      { seed: 20261128, numRuns: 300 },
    );
  });
});

describe('placing', () => {
  test('shapes come centred on their own boxes in whole micrometres, with their places beside', () => {
    const imported = opened(
      svg('<rect x="10" y="10" width="20.0004" height="10"/><circle cx="70" cy="20" r="5"/>'),
    );
    const [plate, disc] = placeImport(imported);
    expect(plate.rings[0]).toHaveLength(4);
    for (const [x, y] of plate.rings[0] as readonly (readonly [number, number])[])
      expect([Math.abs(x), Math.abs(y)]).toEqual([10, 5]);
    expect(disc.rings).toEqual([{ circle_mm: [0, 0, 5] }]);
    expect(disc.at_mm[0] - plate.at_mm[0]).toBeCloseTo(50, 3);
    expect([plate.width_mm, plate.height_mm]).toEqual([20, 10]);
  });

  test('mirroring and turning keep areas and move what they should', () => {
    const imported = opened(fixture('angle.svg'), {}, 'angle.svg');
    const corner = (x: number, y: number): unknown => expect.arrayContaining([[x, y]]);
    // The upper right corner of the foot: (10, −10) from the centre of the L.
    const at = (placement: Placement): unknown => placeImport(imported, placement)[0].rings[0];
    expect(at({})).toEqual(corner(10, -10));
    expect(at({ mirrorX: true })).toEqual(corner(-10, -10));
    expect(at({ mirrorY: true })).toEqual(corner(10, 10));
    expect(at({ turn_deg: 90 })).toEqual(corner(10, 10));
    expect(at({ mirrorX: true, turn_deg: 90 })).toEqual(corner(10, -10));
    expect(at({})).not.toEqual(corner(-10, -10));
    expect(at({})).not.toEqual(corner(10, 10));
    for (const turn_deg of [0, 17, 90, 211.5])
      expect(placeImport(imported, { mirrorX: true, turn_deg })[0].area_mm2).toBeCloseTo(500, 1);
    expect(placeImport(imported, { scale: 2 })[0].area_mm2).toBeCloseTo(2000, 6);
  });

  test('placed shapes are accepted by the layout, each with its area', () => {
    for (const name of ['slotted-plate.dxf', 'ring-inch.dxf', 'mirrored-blocks.dxf', 'gasket.svg']) {
      const placed = placeImport(opened(fixture(name), {}, name));
      const shapes = Object.fromEntries(
        placed.map(({ name: id, rings }) => [id, { slabs: [{ to_mm: 10, rings }] }]),
      );
      const result = readLayoutValue({ ...emptyLayout(), shapes });
      expect(result.ok ? Object.keys(result.value.shapes) : result.fault).toEqual(
        placed.map((shape) => shape.name),
      );
    }
  });
});

test('every thing left out has its sentence', () => {
  const messages = ['left-out.svg', 'left-out.dxf', 'no-units.dxf'].flatMap((name) =>
    importProblems(opened(fixture(name), {}, name)).map(({ code, params }) => messageText(code, params)),
  );
  expect(messages).toContain('1 × “OUTLINE”: lines that do not close; the narrowest gap is 0.5 mm.');
  expect(messages).toContain('1 × on the layer “OLD”, which is frozen.');
  expect(messages).toContain('The file does not say its unit; one unit was taken as 1 mm.');
  for (const message of messages) expect(message).not.toMatch(/[{}]/);
});

test('a line of no length, a name of control characters and an empty layer name do no harm', () => {
  const text = dxf(dxfLine(1, 1, 1, 1) + dxfCircle(0, 0, 3, '\u0007') + dxfCircle(9, 0, 3, ''));
  expect(opened(text).shapes.map(({ name }) => name)).toEqual(['outline', 'outline 2']);
});
