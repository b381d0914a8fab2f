/** The view goes to where parts are. Platform millimetres. */
import { boxUnion } from '../geometry/region';
import type { PartId } from '../layout/types';
import type { Workbench } from '../store/types';
import { bringInto } from './camera';
import { footprintBox } from './plan/items';
import { cameraOf, platformOf } from './viewport';

/** Brings parts into sight; nothing moves where they are. */
export function bringPartsIntoView(bench: Workbench, ids: readonly PartId[]): void {
  const { planSize } = bench.store.getState().view;
  const analysis = bench.analysis();
  const boxes = analysis.parts.filter(({ id }) => ids.includes(id)).map(footprintBox);
  if (planSize === null || boxes.length === 0) return;
  const present = cameraOf(bench);
  const camera = bringInto(boxes.reduce(boxUnion), platformOf(analysis), present, planSize);
  if (camera !== present) bench.setView({ camera });
}
