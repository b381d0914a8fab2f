/**
 * Downwind through the whole engine, on plates computed by hand [mathematics]: two equal loads of width w in line with the
 * flow, half-width b of the strip behind a spot: 2b/w − (b/w)². Geometry only, no flow simulation. Millimetres.
 */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { analyse, figuresAt } from '../../src/build/analyse';
import { downwindPlumes } from '../../src/build/downwind';
import { readLayout } from '../../src/layout/read';
import type { Layout } from '../../src/layout/types';
import { machine, plate, rect, standing, strips } from '../support/plates';

const plumes = (layout: Layout): number[] => {
  const analysis = analyse(layout);
  return downwindPlumes(analysis, figuresAt(analysis, 0));
};
const blowing = (towards_deg: number, lasers = ['L1', 'L2']): Record<string, unknown> => ({
  ...machine(400, lasers),
  gasFlow: { towards_deg },
});
const inLine = (b: number, w: number): number => (2 * b) / w - (b / w) ** 2;

describe('two blocks 160 mm wide in line with the flow, half-width 10 mm', () => {
  const front = standing('front', 10, rect(120, 20, 280, 180));
  const rear = standing('rear', 10, rect(120, 220, 280, 380));
  const on = (towards: number, options: Record<string, unknown> = {}): number[] =>
    plumes(plate([front, rear], strips(0, [0], ['L1', 'L2']), { machine: blowing(towards), ...options }));

  it('leave 0.121 plumes over the downwind beam and none over the other', () => {
    expect(inLine(10, 160)).toBeCloseTo(0.121, 3);
    const [first, second] = on(270);
    expect(first).toBeCloseTo(inLine(10, 160), 4);
    expect(second).toBeCloseTo(0, 9);
    const [upwind, downwind] = on(90);
    expect(upwind).toBeCloseTo(0, 9);
    expect(downwind).toBeCloseTo(inLine(10, 160), 4);
  });
  it('leave none on both with the flow turned by 90°', () => {
    for (const towards of [0, 180]) for (const value of on(towards)) expect(value).toBeCloseTo(0, 9);
  });
  it('follow the half-width that the layout sets', () => {
    expect(on(270, { limits: { plumeHalfWidth_mm: 25 } })[0]).toBeCloseTo(inLine(25, 160), 4);
  });
  it('count a laser that is done in half the time by half', () => {
    const short = { ...rear, timeFactor: 0.5 };
    const layout = plate([front, short], strips(0, [0], ['L1', 'L2']), { machine: blowing(270) });
    expect(plumes(layout)[0]).toBeCloseTo(inLine(10, 160) / 2, 4);
  });
});

describe('the example plate', () => {
  const text = readFileSync(new URL('../../shared/examples/downwind.json', import.meta.url), 'utf8');
  const read = readLayout(text);
  if (!read.ok) throw new Error(read.fault.code);
  const { value: example } = read;
  const turned = (by: number): Layout => {
    const towards_deg = (example.machine.gasFlow.towards_deg + by) % 360;
    return { ...example, machine: { ...example.machine, gasFlow: { towards_deg } } };
  };
  it('has 0.121 on one laser and 0 on the others; turned round, the other one; across, none', () => {
    const sorted = (layout: Layout): number[] => [...plumes(layout)].sort((a, b) => b - a);
    for (const by of [0, 180]) {
      const [most, ...rest] = sorted(turned(by));
      expect(most).toBeCloseTo(0.121, 3);
      for (const value of rest) expect(value).toBeCloseTo(0, 9);
    }
    expect(plumes(turned(0)).findIndex((v) => v > 0.1)).not.toBe(
      plumes(turned(180)).findIndex((v) => v > 0.1),
    );
    for (const by of [90, 270]) for (const value of plumes(turned(by))) expect(value).toBeCloseTo(0, 9);
  });
});

describe('three blocks in a row', () => {
  it('add up over the lasers upwind: 0, one and two times', () => {
    const row = [20, 150, 280].map((y, i) => standing(`b${i}`, 10, rect(150, y, 250, y + 100)));
    const zones = strips(0, [-67, 67], ['L1', 'L2', 'L3']);
    const [a, b, c] = plumes(plate(row, zones, { machine: blowing(90, ['L1', 'L2', 'L3']) }));
    expect(a).toBeCloseTo(0, 9);
    expect(b).toBeCloseTo(inLine(10, 100), 4);
    expect(c).toBeCloseTo(2 * inLine(10, 100), 4);
  });
});
