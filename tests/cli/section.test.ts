// Meshes and drawings from a terminal: one JSON line with shapes, volumes and problems; a bad file is one line on standard
// error and exit code 2. Expected areas and volumes are computed by hand [mathematics]; gearwheel is stl-models' (npm, MIT).
import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, truncateSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, test } from 'vitest';
import { sectionCommand, type SectionReport } from '../../src/cli/section';
import { sectionArguments } from '../../src/cli/sectionArguments';
import { binaryStl, box, inverted, loft, meshXml, moved, rectangle, textStl, threeMf, together, without } from '../import/mesh/meshes'; // prettier-ignore
import { areaAt, gauss } from '../import/mesh/slabs';

const folder = mkdtempSync(join(tmpdir(), 'evenplate-'));
afterAll(() => rmSync(folder, { recursive: true }));
const inFolder = (name: string, content: string | Uint8Array): string => {
  const file = join(folder, name);
  writeFileSync(file, content);
  return file;
};
const report = (...given: string[]): SectionReport => {
  const { exitCode, text } = sectionCommand(given);
  if (exitCode !== 0) throw new Error(text);
  expect(text).toMatch(/^[^\n]+\n$/);
  return JSON.parse(text) as SectionReport;
};
const cube = box([100, 0, 0], [120, 30, 12]);
const cubeFile = inFolder('block.stl', binaryStl(cube));

describe('a mesh', () => {
  test('becomes slabs about its footprint’s middle, standing on 0', () => {
    const { shapes, volume_mm3, problems } = report(cubeFile);
    expect(Object.keys(shapes)).toEqual(['block']);
    const [slab] = shapes.block.slabs;
    expect(shapes.block.slabs).toHaveLength(1);
    expect(slab.to_mm).toBe(12);
    const corners = [...(slab.rings[0] as readonly (readonly number[])[])].map(String).sort();
    expect(corners).toEqual(['-10,-15', '-10,15', '10,-15', '10,15']);
    expect(volume_mm3).toEqual({ block: expect.closeTo(7200, 6) });
    expect(problems.map(({ code }) => code)).toEqual(['mesh-unit-unknown']);
  });
  test('is cut in the layers that are asked for', () => {
    const wedge = inFolder('wedge.stl', textStl(loft(rectangle(0, 0, 10, 10), rectangle(0, 0, 5, 10), 0, 3)));
    const { shapes } = report(wedge, '--layer', '0,5 mm');
    // Widths at the middles 0.25, 0.75 … of layers of 0.5 mm: 10 − 5·z/3.
    expect(shapes.part.slabs.map(({ to_mm }) => to_mm)).toEqual([0.5, 1, 1.5, 2, 2.5, 3]);
    expect(areaAt(shapes.part.slabs, 1.25)).toBeCloseTo(10 * (10 - (5 * 1.25) / 3), 1);
    expect(report(wedge).shapes.part.slabs).toHaveLength(50);
  });
  test('in a 3MF has its unit and its parts', () => {
    const parts = `<object id="1" name="lid">${meshXml(box([0, 0, 0], [1, 2, 3]))}</object><object id="2" name="lid">${meshXml(box([0, 0, 0], [1, 1, 1]))}</object><object id="3" type="support">${meshXml(cube)}</object>`;
    const items = '<item objectid="1"/><item objectid="2"/><item objectid="3"/>';
    const file = inFolder('lids.3mf', threeMf(parts, items, 'unit="centimeter"'));
    const { volume_mm3, problems } = report(file);
    expect(volume_mm3).toEqual({ lid: expect.closeTo(6000, 6), 'lid 2': expect.closeTo(1000, 6) });
    expect(problems.map(({ code }) => code)).toEqual(['mesh-left-out-support']);
  });
  test('of overlapping blocks measures their union, and says so', () => {
    const two = together(cube, moved(cube, [10, 0, 0]));
    const { volume_mm3, problems } = report(inFolder('two.stl', binaryStl(two)));
    expect(volume_mm3.two).toBeCloseTo(30 * 30 * 12, 3);
    expect(problems.map(({ code, shape }) => [code, shape])).toContainEqual(['mesh-overlapping', 'two']);
  });
  test('inside out, or open at the top, is cut all the same', () => {
    const { volume_mm3, problems } = report(inFolder('out.stl', binaryStl(inverted(cube))));
    expect(volume_mm3.out).toBeCloseTo(7200, 6);
    expect(problems.map(({ code }) => code)).toContain('mesh-inside-out');
    const lid = [...Array(12).keys()].filter((t) =>
      [0, 1, 2].every((k) => cube.points[3 * cube.triangles[3 * t + k] + 2] === 12),
    );
    const open = report(inFolder('open.stl', binaryStl(without(cube, ...lid))));
    expect(open.volume_mm3.open).toBeCloseTo(7200, 6);
    expect(open.problems.map(({ code }) => code)).toContain('mesh-open-edges');
  });
});

describe('a drawing', () => {
  const svg = inFolder(
    'plate.svg',
    '<svg xmlns="http://www.w3.org/2000/svg" width="40mm" height="30mm" viewBox="0 0 40 30"><path d="M0 0H40V30H0Z M10 10V20H20V10Z"/></svg>',
  );
  test('is one slab, 10 mm high unless told', () => {
    const { shapes, volume_mm3 } = report(svg);
    const [[id, shape]] = Object.entries(shapes);
    expect(shape.slabs.map(({ to_mm }) => to_mm)).toEqual([10]);
    const areas = shape.slabs[0].rings.map((ring) => Math.abs(gauss(ring)));
    expect(areas).toEqual([1200, 100].map((area) => expect.closeTo(area, 6)));
    expect(volume_mm3[id]).toBeCloseTo(11_000, 6);
    const low = report(svg, '--height', '1/4 in');
    expect(low.shapes[id].slabs[0].to_mm).toBe(6.35);
    expect(low.volume_mm3[id]).toBeCloseTo(1100 * 6.35, 6);
  });
});

describe('arguments', () => {
  test.each([
    [[], 'section-usage'],
    [['a.stl', 'b.stl'], 'section-usage'],
    [['a.stl', '--depth', '3'], 'section-usage'],
    [['a.stl', '--layer'], 'section-usage'],
    [['a.stl', '--layer', '0.1', '--layer', '0.2'], 'section-usage'],
    [['a.stl', '--layer', 'thin'], 'length-unreadable'],
    [['a.stl', '--layer', '0'], 'field-range'],
    [['a.stl', '--layer=-0.1'], 'field-range'],
    [['a.stl', '--layer', '11'], 'field-range'],
    [['a.svg', '--height', '20 m'], 'field-range'],
  ])('%j: %s', (given, code) => {
    expect(sectionArguments(given)).toMatchObject({ ok: false, fault: { code } });
  });
  test('what follows -- is a file whatever it looks like', () => {
    expect(sectionArguments(['--layer=0.03', '--', '--odd.stl'])).toMatchObject({
      value: { file: '--odd.stl', layer_mm: 0.03, height_mm: 10 },
    });
  });
});

describe('a bad file is refused in one line that names it', () => {
  const large = inFolder('large.stl', '');
  truncateSync(large, 100_000_001);
  const zeros = inFolder('zeros.stl', '');
  truncateSync(zeros, 100_000_000);
  const flat = loft(rectangle(0, 0, 5, 5), rectangle(0, 0, 5, 5), 0, 0);
  test.each([
    ['a file that is not there', join(folder, 'nowhere.stl'), 'no such file'],
    ['a folder', folder, 'folder'],
    ['more than 100 MB', large, '101 MB'],
    ['100 MB of zeros', zeros, 'no triangles'],
    ['an empty file', inFolder('empty.stl', ''), 'no triangles'],
    ['a file that was cut off', inFolder('half.stl', binaryStl(cube).subarray(0, 400)), 'cut off'],
    ['a layout', inFolder('layout.json', '{"format":"evenplate-layout"}'), 'neither a mesh nor a drawing'],
    ['a package of something else', inFolder('a.3mf', 'PK\u0003\u0004 and no more'), 'cut off'],
    ['one triangle', inFolder('one.stl', binaryStl(without(cube, ...Array(11).keys()))), 'holds no shape'],
    ['a flat mesh', inFolder('flat.stl', binaryStl(flat)), 'flat'],
    [
      'a drawing without outlines',
      inFolder('none.svg', '<svg xmlns="http://www.w3.org/2000/svg"/>'),
      'no outlines',
    ],
  ])('%s', (_, file, words) => {
    const { exitCode, text } = sectionCommand([file]);
    expect(exitCode).toBe(2);
    expect(text).toContain(words);
    expect(text).toContain(file);
    expect(text).toMatch(/^[^\n]+\n$/);
    expect(text).not.toContain('?');
  });
});

test(
  'as a process of its own: one JSON on standard output, or one line on standard error',
  { timeout: 60_000 },
  () => {
    const gearwheel = fileURLToPath(
      new URL('../../node_modules/stl-models/objects/gearwheel.bin.stl', import.meta.url),
    );
    const run = (file: string) =>
      spawnSync('npm', ['run', '--silent', 'section', '--', file, '--layer', '0.05'], { encoding: 'utf8' });
    const good = run(gearwheel);
    expect([good.status, good.stderr]).toEqual([0, '']);
    const { volume_mm3 } = JSON.parse(good.stdout) as SectionReport;
    expect(Object.values(volume_mm3)).toEqual([expect.closeTo(8922.637, 3)]);
    const bad = run(join(folder, 'nowhere.stl'));
    expect([bad.status, bad.stdout]).toEqual([2, '']);
    expect(bad.stderr).toMatch(/^[^\n]*no such file[^\n]*\n$/);
  },
);
