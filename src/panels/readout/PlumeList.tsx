/**
 * The mean number of plumes over each beam in the layer shown.
 */
import { t } from '../../language/index';
import { memo, useDeferredValue, useMemo } from 'react';
import { downwindPlumes } from '../../build/downwind';
import type { Analysis, LayerFigures } from '../../build/types';
import { barePlumes } from './cellNumbers';
import { Figure } from './Figure';

interface PlumesProps {
  readonly analysis: Analysis;
  readonly figures: LayerFigures | undefined;
}

/** Worked out just after the frame of a drag rather than within it: it costs as much as the analysis itself. */
export function PlumeList({ analysis, figures }: PlumesProps) {
  const shown = useDeferredValue(useMemo(() => ({ analysis, figures }), [analysis, figures]));
  return <PlumeFigures {...shown} />;
}

const PlumeFigures = memo(function PlumeFigures({ analysis, figures }: PlumesProps) {
  const plumes = useMemo(
    () => (figures === undefined ? [] : downwindPlumes(analysis, figures)),
    [analysis, figures],
  );
  return (
    <section className="plumes" aria-label={t('Plumes over each beam, by geometry only')}>
      <h3 title={t('Mean number of plumes over each beam, by geometry only')}>
        {t('PLUMES')} <span>{t('by geometry')}</span>
      </h3>
      {analysis.layout.machine.lasers.map(({ id }, laser) => (
        <Figure
          key={id}
          name={`plumes-${id}`}
          label={id}
          value={barePlumes(plumes[laser] ?? 0)}
          lights={`laser:${laser}`}
        />
      ))}
    </section>
  );
});
