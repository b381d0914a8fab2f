// Small sound layout files that the tests of this folder change one thing at a time in.
import { emptyLayout } from '../../src/layout/defaults';
import type { Revision } from '../../src/layout/types';

type Loose = Record<string, unknown>;

const { schedule: _none, revision: _unfiled, zoning, ...empty } = emptyLayout();

/** The JSON value of a layout file of version 1; every call gives a fresh one. */
export const sample = (): Loose =>
  JSON.parse(
    JSON.stringify({
      ...empty,
      version: 1,
      zoning: zoning[0]?.zoning,
      name: 'Sample',
      shapes: {
        block: {
          slabs: [
            {
              to_mm: 20,
              rings: [
                [
                  [0, 0],
                  [40, 0],
                  [40, 30],
                  [0, 30],
                ],
                { circle_mm: [20, 15, 5] },
              ],
            },
            { to_mm: 35, rings: [{ circle_mm: [20, 15, 12] }] },
          ],
        },
      },
      parts: [
        { id: 'P01', shape: 'block', at_mm: [-60, -50] },
        {
          id: 'P02',
          shape: 'block',
          at_mm: [30, 40],
          turn_deg: 30,
          seams: 'none',
          laser: 'L2',
          timeFactor: 1.5,
        },
      ],
    }),
  ) as Loose;

export const FIELD = { strategy: 'wholeField' };
export const QUADRANTS = {
  strategy: 'quadrants',
  at_mm: [0, 0],
  sharedBand_mm: 40,
  lasers: ['L1', 'L2', 'L3', 'L4'],
};
const DAY = [['06:00', '22:00']];
export const SCHEDULE = {
  start: '2026-11-27T16:00',
  attended: { mon: DAY, tue: DAY, wed: DAY, thu: DAY, fri: DAY, sat: [['08:00', '12:00']], sun: [] },
  feedFilled_l: 60,
  overflowFilled_l: 0,
  residue_laserH: 12.5,
  correction: { factor: 1.08, spread_pct: 10 },
};

/** A sound file of version 2; every call gives a fresh one. */
export const sample2 = (): Loose =>
  structuredClone({
    ...sample(),
    version: 2,
    zoning: [
      { from_mm: 0, zoning: QUADRANTS },
      { from_mm: 60, zoning: FIELD },
    ],
    schedule: SCHEDULE,
  });

export const REVISION: Revision = {
  name: 'B',
  date: '2026-11-27',
  reason: 'seal rings moved off the seam',
  state: 'reviewed',
  author: 'Ada Quay',
  reviewer: 'Bo Pier',
  derivedFrom: '4532415f99f5',
};

/** A sound file of version 3; every call gives a fresh one. */
export const sample3 = (): Loose => structuredClone({ ...sample2(), version: 3, revision: REVISION });

/** The sample with the value at `path` replaced; `undefined` removes the key. */
export function changed(path: readonly (string | number)[], value: unknown, layout: Loose = sample()): Loose {
  const last = path.at(-1) as string;
  const holder = path.slice(0, -1).reduce<Loose>((at, key) => at[key] as Loose, layout);
  if (value === undefined) delete holder[last];
  else holder[last] = value;
  return layout;
}
