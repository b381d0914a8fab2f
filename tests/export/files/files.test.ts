/**
 * Files as they are handed over: their names, what they say of a plate that is not for use, and that reading them gives
 * back what they were made from. Areas and volumes of rectangles [mathematics]; JSON by the language's own reader.
 */
import { unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { finished } from '../../../src/build/finished';
import { longFileSteps } from '../../../src/export/files/long';
import { shortFileSteps } from '../../../src/export/files/short';
import type { FileMade, LongFile, ShortFile } from '../../../src/export/files/types';
import { isBlocked, stateWords } from '../../../src/export/forUse';
import { checksum } from '../../../src/layout/checksum';
import type { Layout, Revision } from '../../../src/layout/types';
import { block, blocked, recordsOf } from '../plates';

const PLAIN = { separator: ',', decimal: '.' } as const;
const COMMA = { separator: ';', decimal: ',' } as const;
const REVISION: Revision = {
  name: 'B',
  date: '2026-11-20',
  reason: 'L2 relieved',
  state: 'reviewed',
  author: 'Ada',
  reviewer: 'Ben',
  derivedFrom: '0123456789ab',
};

const shortOf = (layout: Layout, asked: ShortFile): FileMade =>
  finished(shortFileSteps(analyse(layout), checksum(layout), asked));
function longOf(layout: Layout, file: LongFile): FileMade {
  const analysis = analyse(layout);
  const source = { layout, checksum: checksum(layout), blocked: isBlocked(analysis) };
  const made = finished(longFileSteps({ ...source, state: stateWords(analysis) }, file));
  if (!made.ok) throw new Error(made.fault.code);
  return made.value;
}
const text = ({ content }: FileMade): string => {
  if (typeof content !== 'string') throw new Error('expected text');
  return content;
};
const picture = (change: object = {}): ShortFile => ({
  kind: 'picture',
  height_mm: 5,
  ground: 'light',
  labels: true,
  ...change,
});

/** Every text of an XML; throws where it is not well-formed. */
function textsOf(xml: string): string[] {
  const found: string[] = [];
  const parser = new SaxesParser({ xmlns: true });
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('text', (words) => {
    if (words.trim() !== '') found.push(words.trim());
  });
  parser.write(xml).close();
  return found;
}

describe('names', () => {
  it('carry layout, revision and checksum', () => {
    const sum = checksum(block());
    expect(longOf(block(), { kind: 'parts', csv: PLAIN }).name).toBe(`ferry-spares-plate-1-${sum}-parts.csv`);
    expect(shortOf(block({ revision: REVISION }), { kind: 'layers', csv: PLAIN }).name).toBe(
      `ferry-spares-plate-1-rev-b-${sum}-layers.csv`,
    );
  });

  it('say where the plate is not for use, and at which height it is cut', () => {
    const sum = checksum(blocked());
    expect(shortOf(blocked(), { kind: 'zones', height_mm: 12.25, form: 'dxf' }).name).toBe(
      `ferry-spares-plate-1-${sum}-NOT-FOR-USE-zones-z-12-25.dxf`,
    );
    // above the top of 20 mm the nearest layer is cut
    expect(shortOf(blocked(), picture({ height_mm: 99 })).name).toMatch(/-NOT-FOR-USE-plan-z-20\.svg$/);
  });
});

describe('tables', () => {
  it('with decimal commas and semicolons hold the same numbers', () => {
    const plain = recordsOf(text(longOf(block(), { kind: 'parts', csv: PLAIN })));
    const written = text(longOf(block(), { kind: 'parts', csv: COMMA }));
    expect(written).toContain(';57,6');
    const read = recordsOf(written, ';').map((row) =>
      Object.fromEntries(
        Object.entries(row).map(([key, cell]) => [
          key,
          /^-?\d+,\d+$/.test(cell) ? cell.replace(',', '.') : cell,
        ]),
      ),
    );
    expect(read).toEqual(plain);
  });

  it('begin with a byte order mark where they hold more than ASCII, and only there', () => {
    const named = (id: string) => block({ parts: block().parts.map((part) => ({ ...part, id })) });
    expect(text(longOf(named('Ä1'), { kind: 'parts', csv: PLAIN })).charCodeAt(0)).toBe(0xfeff);
    expect(text(longOf(named('A1'), { kind: 'parts', csv: PLAIN })).startsWith('part,')).toBe(true);
  });

  it('quote a text that holds the other separator, too', () => {
    const parts = block().parts.map((part) => ({ ...part, id: 'a;b,c' }));
    const [row] = recordsOf(text(longOf(block({ parts }), { kind: 'parts', csv: COMMA })), ';');
    expect(row!['part']).toBe('a;b,c');
  });
});

describe('the report', () => {
  it('reads back: figures of the layer asked for, state and revision', () => {
    const made = shortOf(block({ revision: REVISION }), { kind: 'report', height_mm: 15 });
    const read = JSON.parse(text(made)) as Record<string, Record<string, unknown>>;
    expect(read['layout']).toEqual({
      name: 'Ferry spares, plate 1',
      checksum: checksum(block()),
      revision: REVISION,
      state: 'reviewed',
    });
    // layers of 0.05 mm: the one from 15.00 to 15.05
    expect(read['layer']!['height_mm']).toBeCloseTo(15.025, 9);
    expect(read['layer']!['sectionArea_mm2']).toBeCloseTo(3600, 6);
    expect(read['build']!['layers']).toBe(400);
  });

  it('has no revision where nobody has filed the layout, and says NOT FOR USE', () => {
    const read = JSON.parse(text(shortOf(blocked(), { kind: 'report', height_mm: 0 }))) as {
      layout: Record<string, unknown>;
    };
    expect(Object.keys(read.layout)).toEqual(['name', 'checksum', 'state']);
    expect(read.layout['state']).toBe('NOT FOR USE');
  });

  it('says where author and reviewer are one name', () => {
    const alone = block({ revision: { ...REVISION, state: 'released', reviewer: ' ADA' } });
    const read = JSON.parse(text(shortOf(alone, { kind: 'report', height_mm: 0 }))) as {
      layout: Record<string, unknown>;
    };
    expect(read.layout['state']).toBe('released (author and reviewer are one name)');
  });

  it('of an empty plate is there, too', () => {
    const read = JSON.parse(text(shortOf(block({ parts: [] }), { kind: 'report', height_mm: 7 }))) as {
      build: { layers: number };
    };
    expect(read.build.layers).toBe(0);
  });
});

describe('the picture', () => {
  it('is well-formed whatever the plate is called, and says what it shows', () => {
    const layout = block({ name: '<Ferry> & "spares"', revision: REVISION });
    const texts = textsOf(text(shortOf(layout, picture())));
    expect(texts).toContain(`<Ferry> & "spares", revision B, reviewed, z 5 mm, ${checksum(layout)}`);
    expect(texts).toContain('P01');
    expect(texts).not.toContain('NOT FOR USE');
  });

  it('leaves part numbers out where they are not wanted', () => {
    expect(textsOf(text(shortOf(block(), picture({ labels: false }))))).not.toContain('P01');
  });

  it('says NOT FOR USE across the plan', () => {
    expect(textsOf(text(shortOf(blocked(), picture())))).toContain('NOT FOR USE');
  });
});

describe('the bodies', () => {
  it('are a zip under the name of the plate', () => {
    const { name, content } = longOf(blocked(), { kind: 'mesh' });
    expect(name).toMatch(/-NOT-FOR-USE-plate\.3mf$/);
    expect(Object.keys(unzipSync(content as Uint8Array))).toContain('3D/3dmodel.model');
  });
});

it('tells how far it is, from 0 to 1 and never backwards', () => {
  const analysis = analyse(block());
  const source = { layout: block(), checksum: 'x', blocked: false, state: stateWords(analysis) };
  const shares = [...longFileSteps(source, { kind: 'parts', csv: PLAIN })];
  expect(shares.length).toBeGreaterThan(3);
  expect(shares).toEqual([...shares].sort((a, b) => a - b));
  expect(shares[0]).toBeGreaterThanOrEqual(0);
  expect(shares.at(-1)).toBeCloseTo(1, 9);
});
