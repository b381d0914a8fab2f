/**
 * Words about a part under the pointer: angles by hand (mathematics). The block 30 × 40 has its far corner 50 mm from
 * the feet at the platform's middle, 500 mm below them: atan 0.1 = 5.71°, spot √1.01 = 1.005.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { partLines } from '../../src/canvas/partTip';
import { LASERS, machine, plate, QUADRANTS, rect, standing } from '../support/plates';

const optics = (on: (id: string) => boolean) => ({
  lasers: machine().lasers.map((laser) => ({ ...laser, workingHeight_mm: 500, on: on(laser.id) })),
});
const lines = (height: number, on: (id: string) => boolean = () => true) => {
  const parts = [standing('A', 60, rect(200, 200, 230, 240)), standing('B', 120, rect(20, 20, 60, 60))];
  const analysis = analyse(plate(parts, QUADRANTS, { machine: optics(on) }));
  return partLines(analysis, analysis.layer(height), 'A');
};

describe('a part under the pointer', () => {
  test('names each laser that exposes it with its largest angle and the spot there', () => {
    expect(lines(1)).toEqual(['A, angle of incidence', 'L4: at most 5.7°, spot × 1.005']);
  });
  test('says where no laser exposes it', () => {
    expect(lines(1, (id) => id !== LASERS[3])).toEqual(['A, angle of incidence', 'exposed by no laser']);
  });
  test('says that it ends below the height shown', () => {
    expect(lines(1500)).toEqual(['A, no section at this height']);
  });
});
