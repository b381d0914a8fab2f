// A further turn of what is seen: turning a mesh by the angles that come out is turning it by the old ones and then once more
// about an axis of the platform (the very definition; points compared, mathematics).
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { turnedFurther, UNTURNED, type Axis, type Turns } from '../../src/screens/meshCheck/turns';

type Vector = readonly [number, number, number];
const degrees = Math.PI / 180;
function turned([x, y, z]: Vector, axis: Axis, deg: number): Vector {
  const [c, s] = [Math.cos(deg * degrees), Math.sin(deg * degrees)];
  if (axis === 'x') return [x, c * y - s * z, s * y + c * z];
  if (axis === 'y') return [c * x + s * z, y, c * z - s * x];
  return [c * x - s * y, s * x + c * y, z];
}
const by = (point: Vector, { turnX_deg, turnY_deg, turnZ_deg }: Turns): Vector =>
  turned(turned(turned(point, 'x', turnX_deg), 'y', turnY_deg), 'z', turnZ_deg);

test('quarter turns stay whole numbers of degrees', () => {
  const once = turnedFurther(UNTURNED, 'x', 90);
  expect(once).toEqual({ turnX_deg: 90, turnY_deg: 0, turnZ_deg: 0 });
  expect(turnedFurther(once, 'x', -90)).toEqual(UNTURNED);
  // what was up (z) after a quarter about x points to the front (−y); about z it then points to the right (+x)
  const twice = turnedFurther(once, 'z', 90);
  const [x, y, z] = by([0, 0, 1], twice);
  expect([x, y, z]).toEqual([expect.closeTo(1, 9), expect.closeTo(0, 9), expect.closeTo(0, 9)]);
});

test('any turn after any other is the two in a row', () => {
  const angle = fc.integer({ min: 0, max: 359_999 }).map((n) => n / 1000);
  const quarter = fc.constantFrom(0, 90, 180, 270);
  const any = fc.oneof(angle, quarter);
  fc.assert(
    fc.property(any, any, any, fc.constantFrom<Axis>('x', 'y', 'z'), any, (x, y, z, axis, deg) => {
      const before: Turns = { turnX_deg: x, turnY_deg: y, turnZ_deg: z };
      const after = turnedFurther(before, axis, deg);
      for (const point of [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ] as const) {
        const wanted = turned(by(point, before), axis, deg);
        // three angles rounded to 0.001°; near y = ±90° x and z are told together only
        by(point, after).forEach((value, i) => expect(Math.abs(value - wanted[i]!)).toBeLessThan(1e-4));
      }
    }),
    { seed: 20261125, numRuns: 500 },
  );
});
