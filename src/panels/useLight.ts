/**
 * Pointer and focus light up what a figure or row stands for, everywhere on the sheet.
 */
import { useMemo } from 'react';
import { useBench, useWorkbench } from '../canvas/bench';
import type { Lights } from './lights';
import { hoverOf, lightsOf } from './lights';

export interface Light {
  on(): void;
  off(): void;
}

export function useLight(lights: Lights): Light {
  const bench = useWorkbench();
  return useMemo(
    () => ({
      on: () => {
        if (lights !== 'none') bench.setView({ hover: hoverOf(lights) });
      },
      off: () => {
        const lit = lightsOf(bench.store.getState().view.hover);
        if (lights !== 'none' && lit === lights) bench.setView({ hover: null });
      },
    }),
    [bench, lights],
  );
}

/** The light as handlers of one element. */
export function useLightHandlers(lights: Lights) {
  const { on, off } = useLight(lights);
  return { onPointerEnter: on, onPointerLeave: off, onFocus: on, onBlur: off };
}

/** True where this is lit up, by whatever lit it. */
export const useLit = (lights: Lights): boolean =>
  useBench((state) => lights !== 'none' && lightsOf(state.view.hover) === lights);
