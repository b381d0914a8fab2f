/** Analyses of several layouts as they become known; null while one is being computed, a fault where it cannot be. */
import { useEffect, useState } from 'react';
import type { Analysis } from '../../build/types';
import type { Layout } from '../../layout/types';
import { pageAnalyser } from './analysed';

export type Found = Analysis | 'failed' | null;

/** By layout, in the order given. */
export function useAnalysed(layouts: readonly Layout[]): readonly Found[] {
  const [found, setFound] = useState<ReadonlyMap<Layout, Analysis | 'failed'>>(new Map());
  useEffect(() => {
    let current = true;
    const put = (layout: Layout, result: Analysis | 'failed'): void => {
      if (current) setFound((known) => new Map(known).set(layout, result));
    };
    for (const layout of layouts)
      pageAnalyser()
        .of(layout)
        .then(
          (analysis) => put(layout, analysis),
          () => put(layout, 'failed'),
        );
    return () => {
      current = false;
      pageAnalyser().leave(layouts);
    };
  }, [layouts]);
  return layouts.map((layout) => found.get(layout) ?? null);
}
