/** Fits the platform into the plan; pressed again, the platform and the parts that stand off it. */
import { viewOf, where } from '../make';
import type { Command } from '../types';

/** The platform first; from there, where parts stand off it, the platform and all of them, and back. */
export const zoomFit: Command = {
  id: 'zoom-fit',
  label: 'Fit the platform; again: parts off it too',
  group: 'view',
  keys: ['Home'],
  when: where(
    'the platform fits already',
    (context) => viewOf(context).camera !== null || viewOf(context).everything !== null,
  ),
  run: (context) => {
    const { camera, everything } = viewOf(context);
    context.bench.setView({ camera: camera === null ? everything : null });
  },
};
