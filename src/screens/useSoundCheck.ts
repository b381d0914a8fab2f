/**
 * Checks the layer that is shown once nothing else has happened for a while, and tells where its books do not balance: a
 * fault of the program, which nobody should plan with. Every layer is checked once.
 */
import { useEffect } from 'react';
import { useWorkbench } from '../canvas/bench';
import { useLayerLater } from '../panels/useLayer';

/** Without a change for so long. */
const STILL_MS = 1500;

export function useSoundCheck(): void {
  const bench = useWorkbench();
  const { analysis, figures } = useLayerLater();
  useEffect(() => {
    if (!figures) return undefined;
    let current = true;
    const timer = setTimeout(async () => {
      const { layerIsSound } = await import('../build/sound');
      if (!current || bench.gestureOpen()) return;
      const fault = layerIsSound(analysis, figures);
      if (fault) bench.notify(fault);
    }, STILL_MS);
    return () => {
      current = false;
      clearTimeout(timer);
    };
  }, [bench, analysis, figures]);
}
