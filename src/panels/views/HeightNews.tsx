/**
 * What is known of the whole height: nothing is said while it is of the present plate, else of which plate or of how many
 * layers it is and how far the computation has come. And the range of height that wastes most, in words.
 */
import { t } from '../../language/index';
import { useMemo } from 'react';
import { worstRange } from '../../build/worst';
import { useAnalysisLater, useBench, useWorkbench } from '../../canvas/bench';
import { roundMm } from '../../units/round';
import { worstMeaning, worstText } from './worstText';

/** Words for the freshness of what the whole height says; null where it is of the present plate. */
export function useHeightNews(): string | null {
  const { whole } = useAnalysisLater();
  const every = useBench((state) => state.height.known?.every ?? 1);
  const percent = useBench((state) => Math.floor(100 * (state.height.progress ?? 0)));
  const failed = useBench((state) => state.height.failed);
  if (failed && whole !== 'present') return t('of the whole height: not computed');
  switch (whole) {
    case 'present':
      return null;
    case 'sampled':
      if (every === 1) return null;
      return t('from one of {every} layers; {percent} %', { every, percent });
    case 'earlier':
      return t('of the plate before; computing {percent} %', { percent });
    case 'none':
      return t('being computed: {percent} %', { percent });
  }
}

export function HeightNews() {
  const news = useHeightNews();
  return (
    <span className="height-news" data-testid="height-news">
      {news}
    </span>
  );
}

export function WorstHeight() {
  const bench = useWorkbench();
  const { stretches, layout } = useAnalysisLater();
  const { minLayer_s } = layout.process;
  const worst = useMemo(() => worstRange(stretches, minLayer_s), [stretches, minLayer_s]);
  if (worst === null) return null;
  return (
    <button
      type="button"
      className="worst-height"
      data-testid="worst-height"
      title={worstMeaning(worst)}
      onClick={() => bench.setView({ height_mm: roundMm((worst.from_mm + worst.to_mm) / 2) })}
    >
      {worstText(worst)}
    </button>
  );
}
