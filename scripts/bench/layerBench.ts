/**
 * Rows 1 and 2 of the bench: the engine's answer for one layer (areas, loads, exact allocation; and all of it, with cuts
 * made real, seams and build sums) against general-purpose libraries that only inset every part and cut it by the zones.
 */
import { analyse } from '../../src/build/analyse';
import type { Analysis, LayerFigures } from '../../src/build/types';
import type { Layout } from '../../src/layout/types';
import { clipper2Library } from './libraries/clipper2';
import { clipperLibrary } from './libraries/clipperLib';
import { geosLibrary } from './libraries/geos';
import { polygonClippingLibrary } from './libraries/polygonClipping';
import type { Library, Plate, ZoneAreas } from './libraries/types';
import { plannedLayer } from './plannedLayer';
import { BAND_MM, benchLayout, INSET_MM, LASERS, movedLayout, placedRings, zoneRectangles } from './plate';
import { table, timed, TIMED, times } from './table';
import { race, type Contestant } from './timing';

const SEED = 20_261_125;

const plateOf = (layout: Layout, bandWidth: number): Plate => ({
  parts: placedRings(layout),
  zones: zoneRectangles(bandWidth),
  inset_mm: INSET_MM,
});
const librariesFor = async (plate: Plate): Promise<Library[]> => [
  await geosLibrary(plate),
  await clipper2Library(plate),
  clipperLibrary(plate),
  polygonClippingLibrary(plate),
];

type PieceArea = 'area_mm2' | 'hatchArea_mm2';
const engineAreas = ({ layout, stretches }: Analysis<LayerFigures>, key: PieceArea): ZoneAreas => {
  const areas = layout.parts.map(() => new Float64Array(LASERS));
  for (const piece of stretches[0]!.figures.pieces) areas[piece.part]![piece.laser]! += piece[key];
  return areas;
};
/** Largest difference of any part in any zone, relative to the part's own area. */
const difference = (a: ZoneAreas, b: ZoneAreas): number =>
  Math.max(
    ...a.map((row, part) => {
      const whole = row.reduce((sum, area) => sum + area, 0);
      return Math.max(...row.map((area, zone) => Math.abs(area - b[part]![zone]!))) / whole;
    }),
  );

/** Without shared bands every piece is one part in one zone, so engine and libraries must agree piece by piece. */
const agreement = async (): Promise<{ rows: string[][]; worst: number }> => {
  const banded = benchLayout(SEED, 0);
  const layout: Layout = { ...banded, process: { ...banded.process, seamOverlap_mm: 0 } };
  const analysis = analyse(layout);
  const figures = (await librariesFor(plateOf(layout, 0))).map((library) => {
    const inset = library.insetAndZones?.();
    return {
      name: library.name,
      section: difference(library.zonesOnly(), engineAreas(analysis, 'area_mm2')),
      hatch: inset === undefined ? null : difference(inset, engineAreas(analysis, 'hatchArea_mm2')),
    };
  });
  const text = (value: number | null): string => (value === null ? 'has no inset' : value.toExponential(1));
  return {
    rows: figures.map(({ name, section, hatch }) => [name, text(section), text(hatch)]),
    worst: Math.max(...figures.flatMap(({ section, hatch }) => [section, hatch ?? 0])),
  };
};

/** Every part somewhere else in every run: nothing but what hangs on the shapes can be remembered. */
const shifted = (layout: Layout, run: number): Layout => ({
  ...layout,
  parts: layout.parts.map((part) => ({
    ...part,
    at_mm: [part.at_mm[0] + ((run % 97) - 48) / 1000, part.at_mm[1] + ((run % 89) - 44) / 1000],
  })),
});
/** One part somewhere else, the others as they were: what a drag asks for in every frame. */
const moving = (layout: Layout, run: number): Layout =>
  movedLayout(layout, run % 100, ((run % 31) - 15) / 10, ((run % 29) - 14) / 10);

const CACHED = 'engine: everything, insets cached per shape';
const MOVED = 'engine: everything, after moving one part';
const PLANNED = 'engine: areas, loads, exact allocation, insets cached per shape';
const PLANNED_MOVED = 'engine: areas, loads, exact allocation, after moving one part';
const contestants = (layout: Layout, libraries: readonly Library[]): Contestant[] => [
  ...libraries.flatMap(({ name, insetAndZones }) =>
    insetAndZones === null ? [] : [{ name: `${name}: inset + zones`, work: insetAndZones }],
  ),
  ...libraries.map(({ name, zonesOnly }) => ({
    name: `${name}: zones alone, insets given`,
    work: zonesOnly,
  })),
  {
    name: 'engine: everything, nothing remembered',
    work: (run) => analyse(structuredClone(shifted(layout, run))),
  },
  { name: CACHED, work: (run) => analyse(shifted(layout, run)) },
  { name: MOVED, work: (run) => analyse(moving(layout, run)) },
  { name: PLANNED, work: (run) => plannedLayer(shifted(layout, run)) },
  { name: PLANNED_MOVED, work: (run) => plannedLayer(moving(layout, run)) },
];

const engineCounts = ({ stretches, checks }: Analysis<LayerFigures>): string => {
  const { pieces, seams, bestPossible_s, exposure_s } = stretches[0]!.figures;
  const bound = `slowest laser ${exposure_s.toFixed(3)} s, best possible ${bestPossible_s.toFixed(3)} s`;
  return `engine: ${pieces.length} pieces, ${seams.length} seams, ${checks} checks; ${bound}`;
};

export interface LayerBench {
  readonly text: string;
  readonly ratios: readonly {
    readonly what: string;
    readonly ratio: number;
    readonly wanted: number | null;
  }[];
  readonly agreed: boolean;
}

/** @returns the tables of rows 1 and 2, the two ratios, and whether the areas agree to 1e-6 */
export const layerBench = async (): Promise<LayerBench> => {
  const { rows, worst } = await agreement();
  const layout = benchLayout(SEED);
  const plate = plateOf(layout, BAND_MM);
  const timings = race(contestants(layout, await librariesFor(plate)));
  const medianOf = (wanted: string): number => timings.find(({ name }) => name === wanted)!.median_ms;
  const fastest = Math.min(
    ...timings.flatMap(({ name, median_ms }) => (name.endsWith(': inset + zones') ? [median_ms] : [])),
  );
  const vertices = plate.parts.flat(2).length;
  return {
    text: [
      `100 parts, ${vertices} vertices, ${LASERS} strips, shared band ${BAND_MM} mm. ${engineCounts(analyse(layout))}`,
      table(['largest difference from the engine', 'section area', 'hatch area'], rows),
      table(
        ['one layer', ...TIMED, 'against the fastest inset + zones'],
        timings.map((timing) => [...timed(timing), times(fastest / timing.median_ms)]),
      ),
    ].join('\n\n'),
    ratios: [
      { what: 'one layer, insets cached per shape', ratio: fastest / medianOf(PLANNED), wanted: 5 },
      { what: '… with cuts made real, seams, build sums', ratio: fastest / medianOf(CACHED), wanted: null },
      { what: 'after moving one part', ratio: fastest / medianOf(PLANNED_MOVED), wanted: 50 },
      { what: '… with cuts made real, seams, build sums', ratio: fastest / medianOf(MOVED), wanted: null },
    ],
    agreed: worst <= 1e-6,
  };
};
