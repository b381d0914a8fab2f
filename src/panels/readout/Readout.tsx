/**
 * What each laser does in the layer shown and what the build comes to. The same analysis that the plan draws, in the
 * same frame. The book-keeping line stays in view whatever is scrolled.
 */
import { t } from '../../language/index';
import { Suspense, useState } from 'react';
import { useStore } from 'zustand';
import { formatNumber } from '../../units/format';
import { useBench } from '../../canvas/bench';
import { later, onceDrawn } from '../../canvas/later';
import { useLayer } from '../useLayer';
import { BookKeeping } from './BookKeeping';
import { LaserRows } from './LaserRows';
import { LargeFigures, SmallFigures } from './LayerFiguresList';
import { createExplained, ExplainedContext, useExplained } from './explained';
import './readout.css';

const afterFigures = () => import('./afterFigures');
const WholeChoices = later(async () => (await afterFigures()).WholeChoices);
const BuildList = later(async () => (await afterFigures()).BuildList);
const PlumeList = later(async () => (await afterFigures()).PlumeList);
const ExplanationCard = onceDrawn(async () => (await import('./ExplanationCard')).default);

/** Nothing until the first figure is asked about. */
function Explanations() {
  const any = useStore(useExplained(), (state) => state.at !== null);
  const [wanted, setWanted] = useState(false);
  if (any && !wanted) setWanted(true);
  if (!wanted) return null;
  return (
    <Suspense fallback={null}>
      <ExplanationCard />
    </Suspense>
  );
}

export function Readout() {
  const { analysis, figures, layer } = useLayer();
  const height_mm = useBench((state) => state.view.height_mm);
  const [explained] = useState(createExplained);
  return (
    <ExplainedContext value={explained}>
      <section className="view readout" aria-label={t('Readout')}>
        <div className="view-head">
          <h2>{t('LASERS')}</h2>
          <span className="view-note">
            {t('layer {layer} of {layers}, z {height} mm', {
              layer,
              layers: analysis.build.layers,
              height: formatNumber(height_mm, 5, 2),
            })}
          </span>
        </div>
        <div className="readout-body" tabIndex={-1}>
          <LaserRows />
          {analysis.layout.allocation === 'wholeParts' && (
            <Suspense fallback={null}>
              <WholeChoices />
            </Suspense>
          )}
          <LargeFigures figures={figures} />
          <SmallFigures figures={figures} />
          <Suspense fallback={null}>
            <BuildList analysis={analysis} />
            <PlumeList analysis={analysis} figures={figures} />
          </Suspense>
        </div>
        <BookKeeping figures={figures} />
      </section>
      <Explanations />
    </ExplainedContext>
  );
}
