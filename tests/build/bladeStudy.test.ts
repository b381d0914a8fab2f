// What the screen tells of the blade. Expected values: mathematics, on blocks placed by hand.
import { describe, expect, it } from 'vitest';
import { metAt } from '../../src/build/bladeProfile';
import { bladeAt, bladeStudy, sameForBlade } from '../../src/build/bladeStudy';
import { placedPart } from '../../src/exposure/prepared';
import { demoLayout } from '../../src/layout/demo';
import type { Layout } from '../../src/layout/types';
import { plate, QUADRANTS, rect } from '../support/plates';
import { bladeContact } from './blade';

const layout = plate(
  [
    { id: 'P1', at: [0, -50], slabs: [{ to_mm: 12, rings: [rect(-10, -20, 10, 20)] }] },
    { id: 'P2', at: [0, 50], slabs: [{ to_mm: 24, rings: [rect(-10, -15, 10, 15)] }] },
  ],
  QUADRANTS,
);
function finished(of: Layout) {
  const run = bladeStudy(of);
  let last = 0;
  for (;;) {
    const step = run.next();
    if (step.done) return { study: step.value, last };
    expect(step.value).toBeGreaterThanOrEqual(last);
    last = step.value;
  }
}

describe('the blade in one layer', () => {
  it('meets what stands in that layer: 40 + 30 mm below 12 mm, 30 mm above', () => {
    // Layers of 0.06 mm: the 200th ends at 12 mm, the 400th at 24 mm.
    const met = (layer: number) => bladeAt(layout, layer)?.contact.largest.met_mm;
    expect([1, 200, 201, 400].map(met)).toEqual([70, 70, 30, 30]);
    expect([0, 401].map((layer) => bladeAt(layout, layer))).toEqual([null, null]);
  });
  it('names the part that adds most there', () => {
    expect(bladeAt(layout, 1)?.steepest).toMatchObject({ part: 0, part_mm: 40 });
    expect(bladeAt(layout, 300)?.steepest).toMatchObject({ part: 1, part_mm: 30 });
  });
});

describe('what is remembered with a shape', () => {
  it('gives the plate what its sections give where they stand, also after a move and a turn', () => {
    const demo = demoLayout();
    const swung = demo.parts.map((part, i) => ({
      ...part,
      turn_deg: (17 * i) % 360,
      at_mm: [3 * i - 40, 2 * i - 30] as const,
    }));
    for (const parts of [demo.parts, swung]) {
      const now = { ...demo, parts };
      const sections = parts.map((part) => placedPart(now, part).sections[0].section);
      const whole = bladeContact(sections, demo.machine.recoater.towards_deg);
      const { contact } = bladeAt(now, 1)!;
      expect(contact.steepest.rise_mm).toBeCloseTo(whole.steepest.rise_mm, 6);
      expect(contact.sides_mm).toBeCloseTo(whole.sides_mm, 6);
      for (let s = -165; s <= 165; s += 7.3)
        expect(metAt(contact.profile, s)).toBeCloseTo(metAt(whole.profile, s), 6);
    }
  });
});

describe('the study of a build', () => {
  it('advises the part of the steepest rise and lists the long sides', () => {
    const { study, last } = finished(layout);
    expect(study.build.steepest.value).toMatchObject({ part: 0, rise: { rise_mm: 70 } });
    expect(study.advice).toMatchObject({ turn_deg: 45, now_mm: 40 });
    expect(study.sides.map(({ parts }) => parts)).toEqual([['P1'], ['P2']]);
    expect(last).toBeLessThanOrEqual(1);
  });
  it('of an empty plate advises nothing', () => {
    const { study } = finished(plate([], QUADRANTS));
    expect([study.advice, study.sides]).toEqual([null, []]);
  });
  it('is the same for another division, and not for another blade', () => {
    expect(sameForBlade(layout, { ...layout, zoning: [...layout.zoning] })).toBe(true);
    const { machine } = layout;
    const turned = { ...machine, recoater: { ...machine.recoater, towards_deg: 90 } };
    expect(sameForBlade(layout, { ...layout, machine: turned })).toBe(false);
  });
});
