/**
 * Elevation and time per layer, which share z, with the height of the cut as slider, number and list; instead of the
 * time, what the blade meets.
 */
import { t } from '../language/index';
import { Suspense, useState } from 'react';
import { onceDrawn } from '../canvas/later';
import { Elevation } from '../canvas/Elevation';
import { TimePerLayer } from '../canvas/TimePerLayer';
import { Segmented } from '../panels/controls/Segmented';
import { HeightNews, WorstHeight } from '../panels/views/HeightNews';
import { HeightBar } from '../panels/views/HeightBar';
import { useSoundCheck } from './useSoundCheck';

const BladePanel = onceDrawn(async () => (await import('../panels/blade/BladePanel')).BladePanel);

type Right = 'times' | 'blade';
const views = () =>
  [
    { value: 'times', label: t('Time per layer'), content: t('TIME PER LAYER') },
    { value: 'blade', label: t('What the blade meets'), content: t('BLADE') },
  ] as const;

/** One of two views beside the elevation: time per layer, which shares its height, or the blade's contact. */
function RightView() {
  const [shown, setShown] = useState<Right>('times');
  return (
    <section className="view times" aria-label={shown === 'times' ? t('Time per layer') : t('Blade')}>
      <div className="view-head">
        <Segmented<Right>
          label={t('View beside the elevation')}
          value={shown}
          options={views()}
          onChoose={setShown}
        />
        {shown === 'times' && <HeightNews />}
      </div>
      {shown === 'times' ? (
        <>
          <div className="view-body">
            <TimePerLayer />
            <WorstHeight />
          </div>
        </>
      ) : (
        <div className="view-body view-scroll">
          <Suspense fallback={null}>
            <BladePanel />
          </Suspense>
        </div>
      )}
    </section>
  );
}

export function LowerViews() {
  useSoundCheck();
  return (
    <>
      <section className="view elevation" aria-label={t('Elevation')}>
        <div className="view-head height-bar">
          <h2>{t('ELEVATION')}</h2>
          <HeightBar />
        </div>
        <div className="view-body">
          <Elevation />
        </div>
      </section>
      <RightView />
    </>
  );
}
