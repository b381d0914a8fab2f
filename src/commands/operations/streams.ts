/**
 * Gas flow and blade: the directions towards which they move, in degrees counter-clockwise from +x.
 */
import type { Layout } from '../../layout/types';
import type { Degrees } from '../../units/types';
import { roundDeg } from '../../units/round';
import { withMachine } from './edit';

/** Turns the gas flow; for dragging the arrow. */
export function setGasFlow(layout: Layout, towards_deg: Degrees): Layout {
  if (!Number.isFinite(towards_deg)) return layout;
  const towards = roundDeg(towards_deg);
  const same = towards === layout.machine.gasFlow.towards_deg;
  return same ? layout : withMachine(layout, { gasFlow: { towards_deg: towards } });
}

/** Turns the blade's way; for dragging the arrow. */
export function setRecoater(layout: Layout, towards_deg: Degrees): Layout {
  const { recoater } = layout.machine;
  if (!Number.isFinite(towards_deg)) return layout;
  const towards = roundDeg(towards_deg);
  const same = towards === recoater.towards_deg;
  return same ? layout : withMachine(layout, { recoater: { ...recoater, towards_deg: towards } });
}
