/**
 * The drawing of the sheet: all that it says stands on the page, nothing beyond its edge, no words under the least size, none over
 * each other. Words are measured by jsPDF with the font of the page. Contrast by WCAG 2.2 (formula of relative luminance).
 */
import { readFileSync } from 'node:fs';
import { jsPDF } from 'jspdf';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { sheetContent } from '../../../src/export/sheet/content';
import { INK, NOTE, type Measure } from '../../../src/export/sheet/drawing/pen';
import { PAGE, sheetPages } from '../../../src/export/sheet/drawing/sheetSvg';
import { sheetFacts } from '../../../src/export/sheet/facts';
import type { Layout } from '../../../src/layout/types';
import { example, WHOLE_FIELD } from './plates';

const pdf = new jsPDF({ unit: 'mm' });
for (const [file, style] of [
  ['DejaVuSansCondensed.ttf', 'normal'],
  ['DejaVuSansCondensed-Bold.ttf', 'bold'],
] as const) {
  pdf.addFileToVFS(file, readFileSync(`node_modules/dejavu-fonts-ttf/ttf/${file}`).toString('base64'));
  pdf.addFont(file, 'Sheet', style);
}
const measure: Measure = (words, size, bold) => {
  pdf.setFont('Sheet', bold ? 'bold' : 'normal');
  return pdf.getStringUnitWidth(words) * size;
};
const pagesOf = (layout: Layout): string[] => {
  const analysis = analyse(layout);
  const content = sheetContent(analysis, sheetFacts(layout), '2026-11-26 02:00');
  return sheetPages({ content, analysis, height_mm: 0.03, font: 'Sheet', measure });
};

interface Words {
  readonly text: string;
  readonly x0: number;
  readonly x1: number;
  readonly y: number;
  readonly size: number;
}
/** Words of the page itself, without the plans and what stands across it. */
function wordsOf(page: string): Words[] {
  const own = page.replaceAll(/<svg x=[^]*?<\/svg>/g, '').replaceAll(/<g transform[^]*?<\/g>/g, '');
  const found = own.matchAll(
    /<text x="([^"]*)" y="([^"]*)" font-size="([^"]*)"( font-weight="bold")? text-anchor="(\w+)"[^>]*>([^<]*)</g,
  );
  return [...found].map(([, x, y, size, bold, anchor, escaped]) => {
    const text = escaped!.replaceAll('&amp;', '&').replaceAll('&lt;', '<').replaceAll('&gt;', '>');
    const width = measure(text, Number(size), bold !== undefined);
    const back = { start: 0, middle: 0.5, end: 1 }[anchor as 'start'] * width;
    return { text, x0: Number(x) - back, x1: Number(x) - back + width, y: Number(y), size: Number(size) };
  });
}
const beyond = ({ x0, x1, y }: Words): boolean =>
  x0 < PAGE.margin - 0.1 || x1 > PAGE.width - PAGE.margin + 0.1 || y > PAGE.height - 5;
const overlap = (a: Words, b: Words): boolean =>
  a.x0 < b.x1 - 0.1 && b.x0 < a.x1 - 0.1 && a.y - 0.7 * a.size < b.y && b.y - 0.7 * b.size < a.y;

/** Many parts: copies of one small block, in a grid. */
function crowded(count: number): Layout {
  const layout = example('tall-one');
  const { parts } = layout;
  const small = {
    slabs: [
      {
        to_mm: 6,
        rings: [
          [
            [-6, -6],
            [6, -6],
            [6, 6],
            [-6, 6],
          ],
        ],
      },
    ],
  } as unknown as Layout['shapes'][string];
  return {
    ...layout,
    shapes: { small },
    parts: Array.from({ length: count }, (_, i) => ({
      ...parts[0]!,
      id: `K${String(i + 1).padStart(3, '0')}`,
      shape: 'small',
      at_mm: [-180 + 18 * (i % 20), -180 + 18 * Math.floor(i / 20)] as never,
    })),
  };
}
const stepped = (): Layout => {
  const layout = example('demo');
  return { ...layout, zoning: [layout.zoning[0]!, { from_mm: 30, zoning: WHOLE_FIELD }] };
};
const PLATES: readonly (readonly [string, Layout])[] = [
  ['tall one', example('tall-one')],
  ['the demo plate', example('demo')],
  ['zones that change by height', stepped()],
  ['120 small parts', crowded(120)],
  ['a long name', { ...example('ring'), name: 'Παξιμάδια & Fährenteile <für> den Winter '.repeat(4) }],
];

describe.each(PLATES)('the sheet of %s', (_, layout) => {
  const pages = pagesOf(layout);
  const words = pages.map(wordsOf);

  it('has words, none of them beyond the margins', () => {
    for (const page of words) {
      expect(page.length).toBeGreaterThanOrEqual(3);
      expect(page.filter(beyond)).toEqual([]);
    }
  });
  it('writes nothing over anything else', () => {
    for (const page of words)
      expect(page.filter((a, i) => page.slice(i + 1).some((b) => overlap(a, b)))).toEqual([]);
  });
  it('has a plan of its own page only where numbers have no room', () => {
    expect(pages.some((page) => page.includes('all part numbers: next page'))).toBe(
      layout.parts.length > 100,
    );
  });
  it('has no words under 2.2 mm', () => {
    expect(words.flat().filter(({ size }) => size < 2.2)).toEqual([]);
  });
  it('holds every part number in a plan and in the table of parts, and every laser', () => {
    const plans = pages.flatMap((page) => page.match(/<svg x=[^]*?<\/svg>/g) ?? []).join('');
    const texts = words.flat().map(({ text }) => text);
    for (const { id } of layout.parts) {
      expect(plans).toContain(`>${id}</text>`);
      expect(texts).toContain(id);
    }
    for (const { id } of layout.machine.lasers) expect(plans).toContain(`>${id}</text>`);
  });
});

describe('pages', () => {
  it('are one where all has room, more where not, and then the first says so', () => {
    expect(pagesOf(example('tall-one'))).toHaveLength(1);
    expect(pagesOf(example('demo'))).toHaveLength(1);
    const many = pagesOf(crowded(300));
    expect(many.length).toBeGreaterThan(1);
    expect(many[0]).toMatch(/and \d+ more parts: next page/);
    for (const [i, page] of many.entries()) expect(page).toContain(`page ${i + 1} of ${many.length}`);
  });
  it('all say NOT FOR USE where hand-over is blocked, none where it is not', () => {
    const layout = crowded(300);
    const off = layout.machine.lasers.map((laser) => ({ ...laser, on: false }));
    for (const page of pagesOf({ ...layout, machine: { ...layout.machine, lasers: off } }))
      expect(page).toMatch(/rotate\(-55\)"><text[^>]*>NOT FOR USE</);
    for (const page of pagesOf(layout)) expect(page).not.toContain('NOT FOR USE');
  });
});

/** WCAG 2.2, relative luminance and contrast ratio. */
const luminance = (hex: string): number => {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: string, b: string): number => {
  const [dark, light] = [luminance(a), luminance(b)].sort((x, y) => x - y) as [number, number];
  return (light + 0.05) / (dark + 0.05);
};
describe('inks', () => {
  it('stand 4.5 : 1 or better on white, and on white under the words across the page', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 9);
    // black at a tenth over white
    for (const ground of ['#ffffff', '#e6e6e6'])
      for (const ink of [INK, NOTE]) expect(contrast(ink, ground)).toBeGreaterThanOrEqual(4.5);
  });
});
