/**
 * The whole field over the range of height that wastes most: what the plate would take then, computed between other tasks
 * once the plate has been still for a moment. Nothing is suggested that would not pay. Hours are estimates.
 */
import { useEffect, useMemo, useState } from 'react';
import { fitsAFrame } from '../../build/analysis';
import { plateOf } from '../../build/plate';
import { Stacks } from '../../build/stack';
import { totalsOf } from '../../build/totals';
import type { Analysis } from '../../build/types';
import { worstRange, type WorstRange } from '../../build/worst';
import { wholeFieldBetween } from '../../commands/operations';
import type { Layout } from '../../layout/types';
import type { Hours } from '../../units/types';
import { runInSlices } from '../blade/slices';

/** A drag that pauses for less is still a drag. */
const STILL_MS = 300;
/** Of the build's hours; what saves less is not worth cutting parts for. */
const LEAST_SAVING = 0.01;

export interface Suggestion {
  readonly worst: WorstRange;
  /** The plate with the whole field over that range. */
  readonly candidate: Layout;
  /** null: not computed, for a plate too high to be tried beside the page's own work. */
  readonly found: Found | null;
}
export interface Found {
  readonly time_h: Hours;
  /** Most parts cut in any of its layers. */
  readonly cutParts: number;
}

/**
 * The range that wastes most and the plate with the whole field there; null where it is all of the height (one key does that),
 * is divided so already, or is not known of the present plate.
 */
export function candidateOf({ stretches, layout, whole }: Analysis): Omit<Suggestion, 'found'> | null {
  if (whole !== 'present') return null;
  const worst = worstRange(stretches, layout.process.minLayer_s);
  if (worst === null || (worst.from_mm === 0 && worst.toTop)) return null;
  const candidate = wholeFieldBetween(layout, worst.from_mm, worst.toTop ? null : worst.to_mm);
  return candidate === layout ? null : { worst, candidate };
}

const cutIn = ({ stretches }: Pick<Analysis, 'stretches'>, { from_mm, to_mm }: WorstRange): number =>
  stretches
    .filter((stretch) => stretch.to_mm > from_mm && stretch.from_mm < to_mm)
    .reduce((most, { figures }) => Math.max(most, figures.cutParts), 0);

/** Computes the figures of a candidate; nothing until they are known. */
function useFound(tried: Omit<Suggestion, 'found'> | null): Found | null {
  const [known, setKnown] = useState<{ readonly candidate: Layout; readonly found: Found } | null>(null);
  useEffect(() => {
    if (tried === null || !fitsAFrame(tried.candidate)) return undefined;
    const { candidate, worst } = tried;
    let drop = (): void => undefined;
    const begin = setTimeout(() => {
      drop = runInSlices(
        new Stacks(totalsOf).run(plateOf(candidate)),
        () => undefined,
        (stack) =>
          setKnown({
            candidate,
            found: { time_h: stack.build.time_h, cutParts: cutIn(stack, worst) },
          }),
      );
    }, STILL_MS);
    return () => {
      clearTimeout(begin);
      drop();
    };
  }, [tried]);
  return known !== null && known.candidate === tried?.candidate ? known.found : null;
}

/** What pays for this plate; null where nothing does, or as long as it is not known. */
export function useSuggestion(analysis: Analysis): Suggestion | null {
  const tried = useMemo(() => candidateOf(analysis), [analysis]);
  const found = useFound(tried);
  if (tried === null) return null;
  if (found === null) {
    const unknown = !fitsAFrame(tried.candidate) && analysis.layout.allocation === 'balanced';
    return unknown && tried.worst.waiting.length > 0 ? { ...tried, found } : null;
  }
  const pays = found.time_h < (1 - LEAST_SAVING) * analysis.build.time_h;
  return pays ? { ...tried, found } : null;
}
