// Where the parts of a 3MF stand: all places by hand, on a platform of 340 × 340 mm.
import { describe, expect, test } from 'vitest';
import { demoLayout } from '../../src/layout/demo';
import { arrangementOf, placesFor, placesParts } from '../../src/screens/meshCheck/arrangement';
import { firstChoices, withBody } from '../../src/screens/meshCheck/choices';
import type { MeshFileFound } from '../../src/worker/meshMessages';
import type { MeshLook } from '../../src/worker/meshes';

const { machine } = demoLayout();
const first = firstChoices(0.01);

/** A bracket of 40 × 20 mm whose first copy stands with its front left corner where the item puts it. */
const bracket = (items: readonly (readonly [x: number, y: number, turn: number])[]): MeshFileFound => ({
  name: 'plate.3mf',
  kind: '3mf',
  unit: 'millimeter',
  bodies: [
    {
      name: 'bracket',
      copies: items.length,
      triangles: 12,
      items: items.map(([x_mm, y_mm, turn_deg]) => ({ x_mm, y_mm, turn_deg })),
      middle_mm: [items[0]![0] + 20, items[0]![1] + 10],
    },
  ],
  findings: [],
});
const look = { bodies: [{ size_mm: [40, 20, 5] }] } as unknown as MeshLook;
const found = (file: MeshFileFound, choices = first) => {
  const made = arrangementOf(file, look, choices, machine);
  const round = (value: number): number => Math.round(1000 * value) / 1000 + 0;
  return (
    made && [
      made.origin,
      ...made.places.get(0)!.map(({ at_mm, turn_deg }) => [...at_mm!.map(round), turn_deg]),
    ]
  );
};

describe('the platform is found from where the whole arrangement lies', () => {
  test('measured from its front left corner', () => {
    // middles at (30, 20) and (320, 330): 10 mm from the far edges
    expect(found(bracket([[10, 10, 0], [300, 320, 0]]))).toEqual(['corner', [-140, -150, 0], [150, 160, 0]]); // prettier-ignore
  });
  test('measured from its middle', () => {
    expect(found(bracket([[-170, -60, 0], [100, 90, 0]]))).toEqual(['middle', [-150, -50, 0], [120, 100, 0]]); // prettier-ignore
  });
  test('measured from elsewhere: it is moved to the middle as one', () => {
    // boxes from x 1000 to 1100 and from y 0 to 60
    expect(found(bracket([[1000, 0, 0], [1060, 40, 0]]))).toEqual(['moved', [-30, -20, 0], [30, 20, 0]]); // prettier-ignore
  });
});

test('a copy turned about z turns about its item’s point', () => {
  // the middle lies (20, 10) from the point; a quarter on that is (−10, 20): the box is 20 × 40 there
  expect(found(bracket([[10, 10, 0], [100, 50, 90]]))).toEqual(['corner', [-140, -150, 0], [-80, -100, 90]]); // prettier-ignore
});

test('in another unit the whole arrangement grows', () => {
  const inches = { ...first, unit: 'inch' } as const;
  const grown = { bodies: [{ size_mm: [40 * 25.4, 20 * 25.4, 5] }] } as unknown as MeshLook;
  const file = bracket([[0, 0, 0], [2, 0, 0]]); // prettier-ignore
  const [a, b] = arrangementOf(file, grown, inches, machine)!.places.get(0)!;
  expect(b!.at_mm![0] - a!.at_mm![0]).toBeCloseTo(50.8, 9);
});

test('one part alone and parts in one place were not placed; turned bodies have no place', () => {
  expect(placesParts(bracket([[10, 10, 0]]))).toBe(false); // prettier-ignore
  expect(placesParts(bracket([[10, 10, 0], [10, 10, 0]]))).toBe(false); // prettier-ignore
  const two = bracket([[10, 10, 0], [60, 10, 30]]); // prettier-ignore
  expect(placesParts(two)).toBe(true);
  expect(found(two, { ...first, turns: { turnX_deg: 90, turnY_deg: 0, turnZ_deg: 0 } })).toBeNull();
  expect(found(two, withBody(first, two, 0, { use: false }))).toBeNull();
});

test('parts too far apart for any platform have no places', () => {
  // no platform is larger than 10 m
  expect(found(bracket([[0, 0, 0], [20_000, 0, 0]]))).toBeNull(); // prettier-ignore
  expect(found(bracket([[0, 0, 0], [9000, 0, 0]]))).not.toBeNull(); // prettier-ignore
});

test('at free places copies keep the turns of the file', () => {
  const two = bracket([[10, 10, 0], [60, 10, 30]]); // prettier-ignore
  expect(placesFor(two, first, 0, null)).toEqual([
    { at_mm: null, turn_deg: 0 },
    { at_mm: null, turn_deg: 30 },
  ]);
});
