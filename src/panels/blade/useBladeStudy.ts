/**
 * The blade over the whole build, computed between other tasks once the plate has been still for a moment; until then
 * the last one known, with how far the present one is.
 */
import { useEffect, useState } from 'react';
import { bladeStudy, sameForBlade, type BladeStudy } from '../../build/bladeStudy';
import type { Layout } from '../../layout/types';
import { runInSlices } from './slices';

/** A drag that pauses for less is still a drag. */
const STILL_MS = 150;
/** The progress shown moves in such steps. */
const PROGRESS_STEP = 0.05;

export interface StudyShown {
  readonly study: BladeStudy | null;
  /** 0 to 1 while the study of the present plate is being computed; null where `study` is of the present plate. */
  readonly progress: number | null;
}
interface Done {
  readonly layout: Layout;
  readonly study: BladeStudy;
}

export function useBladeStudy(layout: Layout): StudyShown {
  const [done, setDone] = useState<Done | null>(null);
  const [progress, setProgress] = useState(0);
  // The same object as long as nothing changes that the blade meets.
  const [wanted, setWanted] = useState(layout);
  if (!sameForBlade(wanted, layout)) setWanted(layout);
  useEffect(() => {
    let drop = (): void => undefined;
    const begin = setTimeout(() => {
      drop = runInSlices(
        bladeStudy(wanted),
        (now) => setProgress(Math.floor(now / PROGRESS_STEP) * PROGRESS_STEP),
        (study) => setDone({ layout: wanted, study }),
      );
    }, STILL_MS);
    return () => {
      clearTimeout(begin);
      drop();
      setProgress(0);
    };
  }, [wanted]);
  return { study: done?.study ?? null, progress: done?.layout === wanted ? null : progress };
}
