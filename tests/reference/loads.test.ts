/**
 * Loads held against the time model written down a second time, on areas and lengths measured by jsts 2.12 (a port of JTS):
 *   E = A/(h·v) + t_v·n + contours·P/v_c + t_p;  n = A/(s·h) or A/(s·h) + (P+S)/(π·h), 0 where A = 0
 * Random plates in zones that do not overlap. Seconds, millimetres.
 */
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { analyse } from '../../src/build/analyse';
import type { Layout, Part, Process } from '../../src/layout/types';
import { layouts, runs } from '../support/random';
import { allowedFor, line, sectionAt, stripNormal, zoningAt, type Geometry } from '../support/secondLibrary';

interface Measured {
  readonly hatch: number;
  readonly outline: number;
  readonly seam: number;
}
function restated(process: Process, { hatch, outline, seam }: Measured): number {
  const { hatch_mm: h, speed_mm_s: v, vector_mm: s, vectorGap_ms, pieceGap_s, seamOverlap_mm } = process;
  const A = hatch + (seam * seamOverlap_mm) / 2;
  let n = A > 1e-9 ? A / (s * h) : 0;
  if (process.vectorCount === 'areaAndOutline' && A > 1e-9) n += (outline + seam) / (Math.PI * h);
  const contour = (process.contours * outline) / process.contourSpeed_mm_s;
  return A / (h * v) + (vectorGap_ms / 1000) * n + contour + pieceGap_s;
}

interface ZoneBorder {
  readonly lasers: readonly string[];
  readonly on: Geometry;
}
const FAR = 500;
/** Where two zones meet, from the layout's own words. */
function zoneBorders(layout: Layout): ZoneBorder[] {
  const zoning = zoningAt(layout, 0);
  if (zoning.strategy === 'quadrants') {
    const [x, y] = zoning.at_mm;
    const [fl, fr, rl, rr] = zoning.lasers;
    return [
      { lasers: [fl, fr], on: line([x, y], [x, -FAR]) },
      { lasers: [rl, rr], on: line([x, y], [x, FAR]) },
      { lasers: [fl, rl], on: line([x, y], [-FAR, y]) },
      { lasers: [fr, rr], on: line([x, y], [FAR, y]) },
    ];
  }
  if (zoning.strategy !== 'strips') throw new Error(`no lines in ${zoning.strategy}`);
  const [nx, ny] = stripNormal(zoning.run_deg);
  return zoning.lines_mm.map((c, i) => ({
    lasers: [zoning.lasers[i], zoning.lasers[i + 1]],
    on: line([nx * c - ny * FAR, ny * c + nx * FAR], [nx * c + ny * FAR, ny * c - nx * FAR]),
  }));
}

const connected = (geometry: Geometry): Geometry[] =>
  Array.from({ length: geometry.getNumGeometries() }, (_, i) => geometry.getGeometryN(i)).filter(
    (one) => one.getArea() > 1e-5,
  );

/** The pieces of one part that one laser exposes. */
function measure(layout: Layout, part: Part, z: number, laser: number, borders: ZoneBorder[]): Measured[] {
  const section = sectionAt(layout, part, z);
  const { hatchInset_mm } = layout.process;
  const hatch = hatchInset_mm > 0 ? section.buffer(-hatchInset_mm, 32) : section;
  const { id } = layout.machine.lasers[laser];
  return connected(section.intersection(allowedFor(layout)(part)[laser])).map((piece) => {
    const around = piece.buffer(1e-6, 1);
    return {
      hatch: hatch.intersection(around).getArea(),
      outline: section.getBoundary().intersection(around).getLength(),
      seam: borders
        .filter(({ lasers }) => lasers.includes(id))
        .reduce((sum, { on }) => sum + on.intersection(section).intersection(around).getLength(), 0),
    };
  });
}

const processes = fc.record({
  hatchInset_mm: fc.constantFrom(0, 0.05, 1.2),
  vectorCount: fc.constantFrom('area' as const, 'areaAndOutline' as const),
  contours: fc.constantFrom(0, 1, 3),
  seamOverlap_mm: fc.constantFrom(0, 0.2),
  pieceGap_s: fc.constantFrom(0, 0.02, 0.5),
});

it('every load is that of its pieces, each with its own outline, seam and gap', { timeout: 60_000 }, () => {
  fc.assert(
    fc.property(layouts({ parts: 2, spread: 100 }), processes, (random, own) => {
      const process = { ...random.process, ...own };
      const layout = { ...random, process };
      const { figures } = analyse(layout).stretches[0];
      const borders = zoneBorders(layout);
      const close = (found: number, expected: number, what: string): void =>
        expect(Math.abs(found - expected), `${what}: ${found}, restated ${expected}`).toBeLessThan(
          2e-5 * Math.max(1, expected),
        );
      figures.lasers.forEach((laser, k) => {
        const all = layout.parts.map((part) => measure(layout, part, process.layer_mm / 2, k, borders));
        const load = all.map((pieces, p) =>
          pieces.reduce((sum, piece) => sum + layout.parts[p].timeFactor * restated(process, piece), 0),
        );
        const flat = all.flat();
        close(
          laser.load_s,
          load.reduce((a, b) => a + b, 0),
          `load of ${laser.id}`,
        );
        close(
          laser.outline_mm,
          flat.reduce((sum, { outline }) => sum + outline, 0),
          `outline of ${laser.id}`,
        );
        expect(laser.pieces).toBe(flat.length);
      });
      const seam = layout.parts
        .map((part) => sectionAt(layout, part, process.layer_mm / 2))
        .flatMap((section) => borders.map(({ on }) => on.intersection(section).getLength()))
        .reduce((a, b) => a + b, 0);
      close(figures.seamLength_mm, seam, 'seam length');
      close(figures.doubleExposed_mm2, seam * process.seamOverlap_mm, 'double exposure');
      close(figures.exposure_s, Math.max(...figures.lasers.map(({ load_s }) => load_s)), 'exposure');
    }),
    runs(30),
  );
});
