/**
 * A link brings back the layout it was made of: every example, every version, random plates; the report of a decoded
 * layout is the report of the original to the last digit. What comes back is compared with the original value, which
 * never went through a link. A committed link stays readable to the same committed layout.
 */
import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { analyse, layerAtHeight } from '../../src/build/analyse';
import { report } from '../../src/export/report';
import { checksum } from '../../src/layout/checksum';
import { demoLayout } from '../../src/layout/demo';
import { emptyLayout } from '../../src/layout/defaults';
import { readLayout, readLayoutValue } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import {
  decodeComparison,
  decodeLink,
  encodeComparison,
  encodeLink,
  linkKind,
  type Linked,
} from '../../src/link';
import { changed, sample, sample2, sample3 } from '../layout/sample';

const EXAMPLES = 'shared/examples';
const examples = readdirSync(EXAMPLES).filter((name) => name.endsWith('.json'));

function layoutOf(json: unknown): Layout {
  const result = readLayoutValue(json);
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
}
const example = (name: string): Layout => {
  const result = readLayout(readFileSync(`${EXAMPLES}/${name}`, 'utf8'));
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
};
function linked(text: string): Linked {
  const result = decodeLink(text);
  if (!result.ok) throw new Error(result.fault.code);
  return result.value;
}
const firstReport = (layout: Layout): unknown => {
  const analysis = analyse(layout);
  const at = layerAtHeight(analysis, 0);
  return at ? report(analysis, at.figures, at.height_mm) : null;
};

describe('a link', () => {
  test('there are examples', () => expect(examples.length).toBeGreaterThan(10));

  test.each(examples)('of %s gives the same layout, checksum and figures', (name) => {
    const layout = example(name);
    const back = linked(encodeLink(layout)).layout;
    expect(back).toEqual(layout);
    expect(checksum(back)).toBe(checksum(layout));
    expect(JSON.stringify(firstReport(back))).toBe(JSON.stringify(firstReport(layout)));
  });

  test.each([
    ['1', sample],
    ['2', sample2],
    ['3', sample3],
  ])('loses nothing of version %s', (_, make) => {
    const layout = layoutOf(make());
    expect(linked(encodeLink(layout)).layout).toEqual(layout);
  });

  test('keeps keep-outs, reaches, drawn zones, names in any script and closing points', () => {
    const corner = [[0, 0], [10, 0], [10, 10], [0, 0]]; // prettier-ignore
    const json = changed(['machine', 'platform', 'keepOuts'], [{ circle_mm: [-150, 150, 4.321] }, corner]);
    changed(['machine', 'lasers', 0, 'reach'], [[-170, -170], [40, -170], [40, 40], [-170, 40]], json); // prettier-ignore
    const zones = [{ lasers: ['L1', 'L2'], rings: [corner, { circle_mm: [50, 50, 20] }] }];
    changed(['zoning'], { strategy: 'drawn', zones }, json);
    changed(['note'], 'Fähre 渡船 🚢 "~" \u2028', json);
    const layout = layoutOf(json);
    expect(linked(encodeLink(layout)).layout).toEqual(layout);
  });

  test('carries the height and the camera, or neither', () => {
    const view = { height_mm: 12.34, camera: { centreX_mm: -3.3, centreY_mm: 7, pxPerMm: 1.75 } };
    expect(linked(encodeLink(emptyLayout(), view)).view).toEqual(view);
    expect(linked(encodeLink(emptyLayout(), { camera: null })).view).toEqual({});
    expect(linked(encodeLink(emptyLayout())).view).toEqual({});
  });

  test('is not refused for a view that cannot be shown', () => {
    const view = { height_mm: -1, camera: { centreX_mm: 0, centreY_mm: 0, pxPerMm: 1e9 } };
    expect(linked(encodeLink(emptyLayout(), view)).view).toEqual({});
  });

  test('holds only characters that an address never changes', () => {
    // RFC 3986, section 2.3: unreserved characters; the last one is no sign that mail programs leave out.
    expect(encodeLink(demoLayout())).toMatch(/^L1\.[A-Za-z0-9\-._~]+[0-9a-f]$/);
  });

  test('is read out of a whole address and across line breaks', () => {
    const text = encodeLink(demoLayout());
    const broken = `https://plates.example/work/#${text.slice(0, 70)}\r\n ${text.slice(70)}\n`;
    expect(linked(broken).layout).toEqual(demoLayout());
  });
});

const micrometres = fc.integer({ min: -170_000, max: 170_000 }).map((n) => n / 1000);
const outline = fc
  .tuple(
    micrometres,
    micrometres,
    fc.array(fc.tuple(micrometres, micrometres), { minLength: 1, maxLength: 30 }),
  )
  .map(([x, y, more]) => [[x, y], [x + 1, y], [x, y + 1], ...more].map(([a, b]) => [round(a!), round(b!)]));
const round = (value: number): number => Math.round(value * 1000) / 1000;
const ring = fc.oneof(
  outline,
  fc
    .tuple(micrometres, micrometres, fc.integer({ min: 1, max: 90_000 }))
    .map(([x, y, r]) => ({ circle_mm: [x, y, r / 1000] })),
);
const shape = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 60_000 }), fc.array(ring, { maxLength: 4 })), {
    minLength: 1,
    maxLength: 4,
  })
  .map((slabs) => {
    let top = 0;
    return { slabs: slabs.map(([rise, rings]) => ({ to_mm: (top += rise) / 1000, rings })) };
  });
const id = fc
  .string({ unit: 'grapheme', minLength: 1, maxLength: 12 })
  .map((text) => `s${text.replace(/\p{Control}/gu, '')}s`);
const plate = fc
  .record({
    shapes: fc.dictionary(id, shape, { minKeys: 1, maxKeys: 4 }),
    places: fc.array(
      fc.tuple(
        fc.nat(),
        micrometres,
        micrometres,
        fc.integer({ min: 0, max: 359_999 }),
        fc.boolean(),
        fc.double({ min: 0.01, max: 100, noNaN: true }),
      ),
      { maxLength: 20 },
    ),
    name: fc.string({ unit: 'grapheme', maxLength: 40 }),
  })
  .map(({ shapes, places, name }) => {
    const ids = Object.keys(shapes);
    const parts = places.map(([n, x, y, turn, whole, timeFactor], i) => ({
      id: `P${i}`,
      shape: ids[n % ids.length],
      at_mm: [x, y],
      turn_deg: turn / 1000,
      seams: whole ? 'none' : 'free',
      laser: whole ? 'L2' : null,
      timeFactor,
    }));
    return { ...sample(), name, shapes, parts };
  });

describe('any plate', () => {
  test('is the same after a link, checksum and text of a second link too', () => {
    let read = 0;
    fc.assert(
      fc.property(plate, (json) => {
        const result = readLayoutValue(json);
        if (!result.ok) return;
        read++;
        const text = encodeLink(result.value);
        const back = linked(text).layout;
        expect(back).toEqual(result.value);
        expect(checksum(back)).toBe(checksum(result.value));
        expect(encodeLink(back)).toBe(text);
      }),
      { seed: 7, numRuns: 150 },
    );
    expect(read).toBeGreaterThan(75);
  });
});

describe('a comparison', () => {
  const plates = ['nist-plate.json', 'nist-strips-x.json', 'nist-strips-y.json'].map(example);

  test('brings back its layouts in their order, and the height', () => {
    const result = decodeComparison(encodeComparison(plates, { height_mm: 5 }));
    expect(result).toEqual({ ok: true, value: { layouts: plates, view: { height_mm: 5 } } });
  });

  test('holds shapes that its layouts share once', () => {
    const demo = demoLayout();
    const whole = { ...demo, name: 'Whole parts', allocation: 'wholeParts' as const };
    const [one, two] = [encodeLink(demo).length, encodeComparison([demo, whole]).length];
    // besides the shapes there are only places and words, a quarter of the link
    expect(two).toBeLessThan(1.25 * one);
    expect(decodeComparison(encodeComparison([demo, whole]))).toEqual({
      ok: true,
      value: { layouts: [demo, whole], view: {} },
    });
  });

  test.each([
    [1, false],
    [2, true],
    [4, true],
    [5, false],
  ])('of %d layouts: read is %s', (count, read) => {
    const text = encodeComparison(Array.from({ length: count }, () => emptyLayout()));
    expect(decodeComparison(text).ok).toBe(read);
  });

  test('is told from a link of one plate', () => {
    const one = encodeLink(emptyLayout());
    const two = encodeComparison([emptyLayout(), demoLayout()]);
    expect([one, two, `${one} `, '', 'parts', 'L', 'L1', 'X1.2.', 'Left'].map(linkKind)).toEqual([
      'layout', 'comparison', 'layout', null, null, null, 'layout', null, null,
    ]); // prettier-ignore
    expect(decodeLink(two)).toMatchObject({ ok: false, fault: { code: 'link-other-kind' } });
    expect(decodeComparison(one)).toMatchObject({ ok: false, fault: { code: 'link-other-kind' } });
  });
});

describe('a link with the prefix 1, written when it was new,', () => {
  const folder = 'tests/link/prefix1';
  const text = (name: string): string => readFileSync(`${folder}/${name}.txt`, 'utf8');
  const file = (name: string): Layout => {
    const result = readLayout(readFileSync(`${folder}/${name}.json`, 'utf8'));
    if (!result.ok) throw new Error(result.fault.code);
    return result.value;
  };

  test.each(['ferryPlate', 'everyKey'])('still brings %s', (name) => {
    expect(linked(text(name))).toEqual({ layout: file(name), view: { height_mm: 12.5 } });
  });

  test('still brings both of them side by side', () => {
    const layouts = [file('ferryPlate'), file('everyKey')];
    expect(decodeComparison(text('both'))).toEqual({ ok: true, value: { layouts, view: {} } });
  });
});
