/**
 * Where zone numbers stand and in which colours. The platform of 340 mm at 1.2 px a millimetre in the middle of 800 × 600 px
 * reaches from 196 to 604 px across and from 96 to 504 px down [mathematics].
 */
import { describe, expect, it } from 'vitest';
import { drawZoneNumbers } from '../../src/canvas/draw/zoneNumbers';
import type { Ctx, Sheet } from '../../src/canvas/draw/pen';
import { GROUNDS, laserStyle } from '../../src/export/plan/palette';
import { machine, plate, rect } from '../support/plates';
import { analyse } from '../../src/build/analyse';

const GROUND = GROUNDS.light;
const CAMERA = { centreX_mm: 0, centreY_mm: 0, pxPerMm: 1.2 };
const SHEET = { camera: CAMERA, size: { width: 800, height: 600 }, ground: GROUND } as Sheet;

interface Balloon {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly fill: string;
  readonly text: string;
}
/** The balloons drawn for a division; letters are taken to be 7 px wide. */
function balloons(zones: readonly { lasers: readonly string[]; rings: readonly unknown[] }[]): Balloon[] {
  const drawn: Balloon[] = [];
  let box = { left: 0, right: 0, top: 0 };
  let shape = '';
  const ctx = {
    fillStyle: '',
    measureText: (text: string) => ({ width: 7 * text.length }),
    beginPath: () => undefined,
    roundRect: (left: number, top: number, width: number) => (box = { left, right: left + width, top }),
    fill: () => (shape = ctx.fillStyle),
    stroke: () => undefined,
    setLineDash: () => undefined,
    strokeText: () => undefined,
    fillText: (text: string) => drawn.push({ ...box, fill: shape, text }),
  };
  const platform = { width_mm: 340, depth_mm: 340, margin_mm: 0, keepOuts: [] };
  const layout = plate([], { strategy: 'drawn', zones }, { machine: { ...machine(), platform } });
  const [division] = analyse(layout).divisions;
  drawZoneNumbers(ctx as unknown as Ctx, SHEET, 'light', division, platform, []);
  return drawn;
}
describe('the number of a zone', () => {
  it.each([
    ['of all lasers in a corner', ['L1', 'L2', 'L3', 'L4'], rect(-170, -170, 0, 0)],
    ['of two lasers in the far corner', ['L1', 'L2'], rect(0, 0, 170, 170)],
    ['of two lasers over the whole platform', ['L1', 'L2'], rect(-170, -170, 170, 170)],
  ])("%s stays on the platform, in no laser's colour", (_, lasers, own) => {
    const [only, ...more] = balloons([{ lasers, rings: [own] }]);
    expect(more).toEqual([]);
    expect(only!.text).toBe(lasers.join(' '));
    expect(only!.left).toBeGreaterThanOrEqual(196);
    expect(only!.right).toBeLessThanOrEqual(604);
    expect(only!.top).toBeGreaterThanOrEqual(96);
    expect(only!.fill).toBe(GROUND.paper);
  });
  it('of one laser has its colour', () => {
    const [only] = balloons([{ lasers: ['L2'], rings: [rect(0, 0, 170, 170)] }]);
    expect(only!.fill).toBe(laserStyle(1, 'light').tint);
  });
});
