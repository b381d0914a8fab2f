/**
 * Turning a group, by plane geometry: a rigid motion about one point. Expected places are worked out by hand from the
 * plate of store/plates: blocks 20 × 20 at (±60, −60), so their common box spans x ±70, y −70 … −50, middle (0, −60).
 */
import { describe, expect, test } from 'vitest';
import * as op from '../../../src/commands/operations';
import type { Layout } from '../../../src/layout/types';
import { smallPlate } from '../../store/plates';

const PAIR = ['P01', 'P02'];
const part = (layout: Layout, id: string) => layout.parts.find((candidate) => candidate.id === id)!;
const places = (layout: Layout) => PAIR.map((id) => [...part(layout, id).at_mm, part(layout, id).turn_deg]);
const turned = (layout: Layout, ...angles: number[]) =>
  angles.reduce((so, angle) => op.turnTogether(so, PAIR, angle), layout);

describe('parts turned together', () => {
  test('go round the middle of their common box and turn by the same angle', () => {
    expect(places(turned(smallPlate(), 90))).toEqual([
      [0, -120, 90],
      [0, 0, 90],
    ]);
    // 60·cos 30° = 51.9615, 60·sin 30° = 30
    expect(places(turned(smallPlate(), 30))).toEqual([
      [-51.962, -90, 30],
      [51.962, -30, 30],
    ]);
  });

  test('leave the others where they are, the document itself where nothing turns', () => {
    const plate = smallPlate();
    expect(part(turned(plate, 90), 'P03')).toBe(part(plate, 'P03'));
    expect(turned(plate, 0)).toBe(plate);
    expect(turned(plate, 360)).toBe(plate);
    expect(turned(plate, Number.NaN)).toBe(plate);
    expect(op.turnTogether(plate, ['nobody'], 30)).toBe(plate);
  });

  test('come back after four quarters, and after 24 steps of 15° to within their rounding', () => {
    const plate = smallPlate();
    expect(turned(plate, 90, 90, 90, 90)).toEqual(plate);
    const round = turned(plate, ...Array.from({ length: 24 }, () => 15));
    PAIR.forEach((id) => {
      const [before, after] = [part(plate, id), part(round, id)];
      expect(after.turn_deg).toBe(before.turn_deg);
      // every step rounds each coordinate by at most half a micrometre
      const off = Math.hypot(after.at_mm[0] - before.at_mm[0], after.at_mm[1] - before.at_mm[1]);
      expect(off).toBeLessThan(24 * 0.0005 * Math.SQRT2);
    });
  });

  test('take a new middle once something else has changed them', () => {
    const moved = op.moveParts(turned(smallPlate(), 90), ['P02'], 0, 60);
    // boxes −10 … 10 × −130 … −110 and −10 … 10 × 50 … 70: middle (0, −30)
    expect(places(turned(moved, 180))).toEqual([
      [0, 60, 270],
      [0, -120, 270],
    ]);
  });

  test('one part alone turns about its own origin', () => {
    const plate = smallPlate();
    expect(part(op.turnTogether(plate, ['P03'], 30), 'P03')).toEqual({ ...part(plate, 'P03'), turn_deg: 30 });
  });
});
