/**
 * Pointer and focus handlers that light up what a figure or row stands for, everywhere on the sheet.
 */
import { useMemo } from 'react';
import { useBench, useWorkbench } from '../canvas/bench';
import type { Lights } from './lights';
import { hoverOf, lightsOf } from './lights';

export function useLight(lights: Lights) {
  const bench = useWorkbench();
  return useMemo(() => {
    if (lights === 'none') return {};
    const on = (): void => bench.setView({ hover: hoverOf(lights) });
    const off = (): void => {
      if (lightsOf(bench.store.getState().view.hover) === lights) bench.setView({ hover: null });
    };
    return { onPointerEnter: on, onPointerLeave: off, onFocus: on, onBlur: off };
  }, [bench, lights]);
}

/** True where this is lit up, by whatever lit it. */
export const useLit = (lights: Lights): boolean =>
  useBench((state) => lights !== 'none' && lightsOf(state.view.hover) === lights);
