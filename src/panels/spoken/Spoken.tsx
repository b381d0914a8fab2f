/**
 * The page for those who hear it: the one polite live region, and the parts and zones of the plan as lists with real
 * names. Both follow once the plate has come to rest, so that a drag or a held key is spoken of once, by its end.
 */
import { t } from '../../language/index';
import { memo, useEffect, useState } from 'react';
import { useWorkbench } from '../../canvas/bench';
import { layerFiguresAt } from '../../canvas/layerAt';
import { newsOf } from './news';
import { onSaid } from './say';
import { partTexts, zoneTexts } from './spokenText';

/** A change is spoken of when nothing has followed it for so long. */
const REST_MS = 350;

interface Rest {
  /** The same words twice change nothing in the region, so nothing is said twice. */
  readonly news: string;
  /** Counts the times the plate has come to rest. */
  readonly rests: number;
}

function useRest(): Rest {
  const bench = useWorkbench();
  const [rest, setRest] = useState<Rest>({ news: '', rests: 0 });
  useEffect(() => {
    let said = bench.store.getState();
    let timer: ReturnType<typeof setTimeout> | undefined;
    const wait = () => {
      clearTimeout(timer);
      timer = setTimeout(tell, REST_MS);
    };
    const tell = () => {
      if (bench.gestureOpen()) return wait();
      const words = newsOf(bench, said);
      said = bench.store.getState();
      setRest(({ news, rests }) => ({ news: words ?? news, rests: rests + 1 }));
    };
    const stops = [
      bench.store.subscribe(({ layout, view }, before) => {
        if (layout !== before.layout || (view !== before.view && view.hover === before.view.hover)) wait();
      }),
      onSaid((words) => setRest((now) => ({ ...now, news: words }))),
      () => clearTimeout(timer),
    ];
    return () => stops.forEach((stop) => stop());
  }, [bench]);
  return rest;
}

/** What the picture of the plan shows, as lists. Drawn anew with every rest and with nothing else. */
const PlanWords = memo(function PlanWords({ rests }: { readonly rests: number }) {
  const bench = useWorkbench();
  const { layout, view } = bench.store.getState();
  const figures = layerFiguresAt(bench.analysis(), view.height_mm);
  const parts = partTexts(layout, figures);
  return (
    <section className="visually-hidden" aria-label={t('Parts and zones of the plan')} data-rests={rests}>
      <ul aria-label={t('Zones')}>
        {zoneTexts(layout, figures).map((words) => (
          <li key={words}>{words}</li>
        ))}
      </ul>
      <ul aria-label={t('Parts')}>
        {layout.parts.map(({ id }, index) => (
          <li key={id}>
            {parts[index]}
            {view.selection.includes(id) && t(', selected')}
          </li>
        ))}
      </ul>
    </section>
  );
});

export function Spoken() {
  const { news, rests } = useRest();
  return (
    <>
      <PlanWords rests={rests} />
      <p className="visually-hidden" aria-live="polite" data-testid="spoken">
        {news}
      </p>
    </>
  );
}
