/**
 * Machine and process. Figures beside the checks are plain arithmetic on the platform of
 * 340 × 340 mm with lasers at (±75, ±75) [mathematics].
 */
import { describe, expect, test } from 'vitest';
import { demoLayout } from '../../../src/layout/demo';
import { smallPlate } from '../../store/plates';
import { op } from '../wholeHeight';
import { accepted, zoningOf } from './read';

describe('machine and process', () => {
  test('arrows turn to whole thousandths of a degree within one turn', () => {
    expect(op.setGasFlow(demoLayout(), -90.00049).machine.gasFlow.towards_deg).toBe(270);
    expect(op.setRecoater(demoLayout(), 725.5).machine.recoater.towards_deg).toBe(5.5);
    expect(op.setGasFlow(demoLayout(), Number.NaN)).toEqual(demoLayout());
  });

  test('a removed laser leaves its zones to the nearest and no part pinned to it', () => {
    const pinned = op.setPartFields(smallPlate(), ['P01', 'P02'], { laser: 'L2' });
    const next = op.removeLaser(accepted(op.setLaser(pinned, 'L4', { foot_mm: [75, -40] })), 'L2');
    expect(next.machine.lasers.map(({ id }) => id)).toEqual(['L1', 'L3', 'L4']);
    expect(zoningOf(next, 'quadrants').lasers).toEqual(['L1', 'L4', 'L3', 'L4']);
    expect(next.parts.map(({ laser }) => laser)).toEqual([null, null, null]);
  });

  test('a removed laser leaves a drawn zone of its own to all others', () => {
    const drawn = op.setStrategy(smallPlate(), 'drawn');
    const next = op.removeLaser(op.setZoneLasers(drawn, 0, ['L1', 'L2']), 'L2');
    expect(zoningOf(next, 'drawn').zones.map(({ lasers }) => lasers)).toEqual([
      ['L1'],
      ['L1', 'L3', 'L4'],
      ['L3'],
      ['L4'],
    ]);
  });

  test('a new laser has the first free number, and there are at most 31', () => {
    const gap = op.addLaser(op.removeLaser(smallPlate(), 'L2'));
    expect(gap.machine.lasers.map(({ id }) => id)).toEqual(['L1', 'L3', 'L4', 'L2']);
    let many = smallPlate();
    for (let i = 0; i < 40; i++) many = op.addLaser(many);
    expect(many.machine.lasers).toHaveLength(31);
  });

  test('typed fields are rounded where they fit and refused with the reason where they do not', () => {
    const plate = smallPlate();
    expect(accepted(op.setProcess(plate, { layer_mm: 0.04049 })).process.layer_mm).toBe(0.04);
    expect(accepted(op.setPlatform(plate, { margin_mm: 12 })).machine.platform.margin_mm).toBe(12);
    expect(accepted(op.setMachine(plate, { recoater: { oneWay_s: 12 } })).machine.recoater).toEqual({
      ...plate.machine.recoater,
      oneWay_s: 12,
    });
    expect(accepted(op.setTexts(plate, { name: 'Spares' })).name).toBe('Spares');
    const refusals = [
      op.setProcess(plate, { packing: 1.2 }),
      op.setProcess(plate, { contours: 1.5 }),
      op.setLimits(plate, { spacing_mm: Number.NaN }),
      op.setPlatform(plate, { width_mm: -1 }),
      op.setMachine(plate, { buildHeight_mm: 1e300 }),
      op.setLaser(plate, 'L1', { workingHeight_mm: 0 }),
    ];
    for (const refused of refusals)
      expect(refused).toMatchObject({ ok: false, fault: { code: 'layout-wrong-value' } });
  });

  test('what is typed as it was changes nothing', () => {
    const plate = smallPlate();
    expect(accepted(op.setProcess(plate, { hatch_mm: 0.10000001 }))).toBe(plate);
    expect(accepted(op.setLaser(plate, 'L9', { on: false }))).toBe(plate);
    expect(op.switchLaser(plate, 'L1', true)).toBe(plate);
    expect(op.setAllocation(plate, 'balanced')).toBe(plate);
  });

  test('keep-outs come and go', () => {
    const one = accepted(op.addKeepOut(smallPlate(), { circle_mm: [100, 100, 12.00049] }));
    expect(one.machine.platform.keepOuts).toEqual([{ circle_mm: [100, 100, 12] }]);
    expect(op.removeKeepOut(one, 0)).toEqual(smallPlate());
    expect(op.removeKeepOut(one, 3)).toBe(one);
  });
});
