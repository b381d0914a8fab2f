// A mesh file at its desk, without a worker: what is read, looked at and cut is what the file holds; a job that nobody waits
// for any more leaves nothing. Figures of boxes and of the pyramid are mathematics.
import { beforeEach, describe, expect, test } from 'vitest';
import { area } from '../../src/geometry/region';
import { ringFromLayout } from '../../src/geometry/ring';
import { footprintOf } from '../../src/exposure/prepared';
import { readLayoutValue } from '../../src/layout/read';
import { demoLayout } from '../../src/layout/demo';
import { addShapes } from '../../src/commands/operations';
import type { MeshSettings } from '../../src/worker/meshMessages';
import { openDesk, type MeshDesk, type MeshNews } from '../../src/worker/meshes';
import { binaryStl as stlBytes, box, loft, rectangle, textStl, together } from '../import/mesh/meshes';
import type { Mesh } from '../../src/import/mesh';

const PLAIN: MeshSettings = { placement: {}, joinCracks: false, chainGap_mm: 0.01 };
const LAYER_mm = 0.5;

/** A desk whose news are waited for. */
class Reception {
  readonly news: MeshNews[] = [];
  private waiting: (() => void)[] = [];
  readonly desk: MeshDesk = openDesk(null, (news) => {
    this.news.push(news);
    for (const go of this.waiting.splice(0)) go();
  });
  async next<K extends MeshNews['kind']>(kind: K): Promise<Extract<MeshNews, { kind: K }>> {
    for (;;) {
      const at = this.news.findIndex((news) => news.kind === kind);
      if (at >= 0) return this.news.splice(at, 1)[0] as Extract<MeshNews, { kind: K }>;
      await new Promise<void>((resolve) => this.waiting.push(resolve));
    }
  }
  /** Everything that is still on its way has come. */
  quiet(): Promise<void> {
    return new Promise((resolve) => setTimeout(resolve, 60));
  }
}
let at: Reception;
beforeEach(() => {
  at = new Reception();
});
const binaryStl = (mesh: Mesh): Uint8Array<ArrayBuffer> => Uint8Array.from(stlBytes(mesh));
/** Several named solids in one text STL. */
const meshFile = (solids: readonly (readonly [string, Mesh])[]): Uint8Array<ArrayBuffer> =>
  Uint8Array.from(new TextEncoder().encode(solids.map(([name, mesh]) => textStl(mesh, name)).join('')));

const cube = box([0, 0, 0], [20, 20, 20]);
// 2 × 2 at the bottom, 22 × 22 at the top, 10 high
const frustum = loft(rectangle(-1, -1, 1, 1), rectangle(-11, -11, 11, 11), 0, 10);

async function opened(bytes: Uint8Array<ArrayBuffer>, name = 'spare.stl') {
  at.desk.read(name, bytes);
  return (await at.next('read')).file;
}
async function lookedAt(settings: MeshSettings = PLAIN, shown = 0) {
  at.desk.look(settings, shown);
  return (await at.next('looked')).look;
}
async function cut(settings: MeshSettings = PLAIN, places: readonly number[] = [0]) {
  at.desk.cut(settings, places, LAYER_mm);
  return (await at.next('cut')).bodies;
}

describe('a mesh file', () => {
  test('is read, its cube is 20 mm each way and watertight', async () => {
    const file = await opened(binaryStl(cube));
    expect(file).toMatchObject({
      kind: 'stl',
      unit: null,
      bodies: [{ name: 'spare', triangles: 12, copies: 1, items: [], middle_mm: expect.any(Array) }],
    });
    expect(file.findings.map(({ code }) => code)).toEqual(['mesh-unit-unknown']);
    const { bodies } = await lookedAt();
    expect(bodies[0]!.size_mm).toEqual([20, 20, 20]);
    expect(bodies[0]!.check).toMatchObject({ closed: true, shells: 1 });
    expect(bodies[0]!.check.volume_mm3).toBeCloseTo(8000, 6);
  });

  test('that cannot be read is a fault, and nothing else is heard', async () => {
    at.desk.read('spare.stl', new Uint8Array(new TextEncoder().encode('solid spare\n facet normal 0 0 1\n')));
    expect((await at.next('fault')).fault.code).toBe('mesh-truncated');
    await at.quiet();
    expect(at.news.filter(({ kind }) => kind !== 'progress')).toEqual([]);
  });

  test('in inches is 25.4 times as large, and its volume 25.4³ times', async () => {
    await opened(binaryStl(cube));
    const { bodies } = await lookedAt({ ...PLAIN, placement: { scale: 25.4 } });
    for (const side of bodies[0]!.size_mm) expect(side).toBeCloseTo(508, 9);
    expect(bodies[0]!.check.volume_mm3! / (8000 * 25.4 ** 3)).toBeCloseTo(1, 9);
  });

  test('turned by 90° about x stands on what was its back', async () => {
    await opened(binaryStl(box([0, 0, 0], [10, 20, 30])));
    const { bodies } = await lookedAt({ ...PLAIN, placement: { turnX_deg: 90 } });
    bodies[0]!.size_mm.forEach((side, i) => expect(side).toBeCloseTo([10, 30, 20][i]!, 9));
  });
});

describe('cutting', () => {
  test('a cube gives one slab of 400 mm² over all layers', async () => {
    await opened(binaryStl(cube));
    const [body] = await cut();
    if (!body?.ok) throw new Error('the cube was not cut');
    expect(body.cut).toMatchObject({ slabCount: 1, layers: 40, emptyLayers: 0, openLayers: 0 });
    expect(body.cut.volume_mm3).toBeCloseTo(8000, 6);
    expect(body.shape.slabs).toHaveLength(1);
    expect(body.shape.slabs[0]!.to_mm).toBe(20);
    expect(area(body.shape.slabs[0]!.rings.map(ringFromLayout))).toBeCloseTo(400, 9);
  });

  test('a frustum gives a slab a layer, cut at its middle, and its footprint is its largest section', async () => {
    await opened(binaryStl(frustum));
    const [body] = await cut();
    if (!body?.ok) throw new Error('the frustum was not cut');
    expect(body.shape.slabs).toHaveLength(20);
    body.shape.slabs.forEach(({ to_mm, rings }, k) => {
      const side = 2 + 2 * (k + 0.5) * LAYER_mm;
      expect(to_mm).toBeCloseTo((k + 1) * LAYER_mm, 9);
      expect(area(rings.map(ringFromLayout))).toBeCloseTo(side ** 2, 2);
    });
    expect(area(footprintOf(body.shape))).toBeCloseTo(21.5 ** 2, 2);
  });

  test('what comes out is what a layout file may hold, unchanged', async () => {
    await opened(binaryStl(frustum));
    const [body] = await cut();
    if (!body?.ok) throw new Error('the frustum was not cut');
    const placed = addShapes(demoLayout(), [
      { name: 'frustum', shape: body.shape, copies: 2, sound: true, seams: 'none' },
    ]);
    if (!placed.ok) throw new Error(placed.fault.code);
    expect(readLayoutValue(JSON.parse(JSON.stringify(placed.value)))).toEqual(placed);
    expect(placed.value.parts.slice(-2).map(({ shape, seams }) => [shape, seams])).toEqual([
      ['frustum', 'none'],
      ['frustum', 'none'],
    ]);
  });

  test('several bodies come in the order asked; one that cannot be cut says why', async () => {
    const file = await opened(
      meshFile([
        ['plate', cube],
        ['far', box([0, 0, 0], [20_000, 1, 1])],
        ['block', box([0, 0, 0], [5, 5, 5])],
      ]),
    );
    expect(file.bodies.map(({ name }) => name)).toEqual(['plate', 'far', 'block']);
    const bodies = await cut(PLAIN, [2, 1, 0]);
    expect(bodies.map((body) => (body.ok ? body.cut.volume_mm3 : body.fault.code))).toEqual([
      expect.closeTo(125, 6),
      'mesh-too-large',
      expect.closeTo(8000, 6),
    ]);
  });

  test('says what it does and which layer it is at', async () => {
    await opened(binaryStl(many()));
    await cut();
    const doing = at.news.flatMap((news) => (news.kind === 'progress' ? [news.at] : []));
    const layers = doing.flatMap((word) => (word.doing === 'cutting' ? [word.layer] : []));
    expect(layers.length).toBeGreaterThan(0);
    expect(layers).toEqual([...layers].sort((a, b) => a - b));
    for (const word of doing) if (word.doing === 'cutting') expect(word.layers).toBe(400);
  });

  test('that is stopped leaves nothing, and the file can be cut again', async () => {
    await opened(binaryStl(many()));
    at.desk.cut(PLAIN, [0], LAYER_mm);
    await at.next('progress');
    at.desk.stop();
    at.news.length = 0;
    await at.quiet();
    expect(at.news).toEqual([]);
    const [body] = await cut();
    expect(body?.ok).toBe(true);
  });

  test('gives way to a newer look', async () => {
    await opened(binaryStl(many()));
    at.desk.cut(PLAIN, [0], LAYER_mm);
    await lookedAt();
    await at.quiet();
    expect(at.news.some(({ kind }) => kind === 'cut')).toBe(false);
  });

  test('nothing is heard after the desk is closed', async () => {
    await opened(binaryStl(many()));
    at.desk.cut(PLAIN, [0], LAYER_mm);
    at.desk.close();
    at.news.length = 0;
    await at.quiet();
    expect(at.news).toEqual([]);
  });
});

/** 200 mm of stacked frustums side by side: enough to be cut in several slices of time. */
function many() {
  const columns = Array.from({ length: 40 }, (_, i) =>
    loft(rectangle(30 * i, 0, 30 * i + 5, 5), rectangle(30 * i - 5, -5, 30 * i + 10, 10), 0, 200),
  );
  return together(...columns);
}

test('fine cracks are joined where that is asked', async () => {
  const { points, triangles } = cube;
  // the top face has corners of its own, 0.002 mm above the walls'
  const raised = Float64Array.from([
    ...points,
    ...points.slice(12).map((v, i) => (i % 3 === 2 ? v + 0.002 : v)),
  ]);
  const torn = {
    points: raised,
    triangles: triangles.map((point, i) => {
      const t = 3 * Math.floor(i / 3);
      return [0, 1, 2].every((k) => triangles[t + k]! >= 4) ? point + 4 : point;
    }),
  };
  await opened(binaryStl(torn));
  const before = (await lookedAt()).bodies[0]!;
  expect(before.check.closed).toBe(false);
  expect(before.crack_mm).not.toBeNull();
  const after = (await lookedAt({ ...PLAIN, joinCracks: true })).bodies[0]!;
  expect(after.check.closed).toBe(true);
  expect(after.crack_mm).toBe(before.crack_mm);
});
