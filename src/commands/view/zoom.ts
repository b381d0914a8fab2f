/** Zooms about the middle of the plan; the pointer's own zoom is the canvas's. */
import type { Text } from '../../language/index';
import type { Camera } from '../../store/types';
import { viewOf, where } from '../make';
import type { Command, Context } from '../types';

const STEP = 1.25;
const LEAST_PX_PER_MM = 0.02;
const MOST_PX_PER_MM = 400;

/** What the plan shows now; null before it has been laid out. */
const shown = (context: Context): Camera | null => viewOf(context).camera ?? viewOf(context).fitted;

const zoom = (id: string, label: Text, keys: readonly string[], factor: number): Command => ({
  id,
  label,
  group: 'view',
  keys,
  whileHeld: true,
  when: where('the plan is not drawn yet', (context) => shown(context) !== null),
  run: (context) => {
    const camera = shown(context);
    if (!camera) return;
    const pxPerMm = Math.min(Math.max(camera.pxPerMm * factor, LEAST_PX_PER_MM), MOST_PX_PER_MM);
    context.bench.setView({ camera: { ...camera, pxPerMm } });
  },
});

export const zoomIn = zoom('zoom-in', 'Zoom in', ['+', '='], STEP);
export const zoomOut = zoom('zoom-out', 'Zoom out', ['-'], 1 / STEP);
