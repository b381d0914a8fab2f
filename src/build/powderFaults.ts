/**
 * Does the dose fill every layer? A layer needs more powder than a bare one where it melts: what is too little there is a
 * problem, since the blade then leaves part of the layer without powder. Cubic centimetres a layer; layers count from 1.
 */
import { figure } from '../layout/result';
import type { Layout } from '../layout/types';
import { powderOfLayer } from './powder';
import { problem } from './problem';
import type { Problem, Stretch } from './types';

const CM3_PER_L = 1e3;
/** Of the dose: rounding is no shortage. */
const ROUNDING = 1e-9;

/** One problem for all layers whose dose is too small, and how many checks stand behind it. */
export function powderFaults(
  { machine, process }: Layout,
  stretches: readonly Stretch[],
): { problems: Problem[]; checks: number } {
  const platform_mm2 = machine.platform.width_mm * machine.platform.depth_mm;
  let first: Stretch | null = null;
  let layers = 0;
  let worst = 0;
  let factor = 0;
  for (const stretch of stretches) {
    const powder = powderOfLayer(platform_mm2, stretch.figures.sectionArea_mm2, process);
    if (powder.overflow_l >= -ROUNDING * powder.dose_l) continue;
    first ??= stretch;
    layers += stretch.lastLayer - stretch.firstLayer + 1;
    worst = Math.max(worst, -powder.overflow_l);
    factor = Math.max(factor, (process.doseFactor * powder.need_l) / powder.dose_l);
  }
  if (!first) return { problems: [], checks: 1 };
  const params = {
    layers,
    from: first.firstLayer,
    short: figure((worst * CM3_PER_L).toPrecision(3)),
    factor: figure((Math.ceil(factor * 100) / 100).toFixed(2)),
  };
  return { problems: [problem('dose-too-small', params, [])], checks: 1 };
}
