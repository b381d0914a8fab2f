/**
 * The open plate under every division, in small pictures with their figures; one press takes one over. Hours are of the
 * whole build, the rest of the layer shown.
 */
import { t, type Text } from '../language/index';
import { useMemo } from 'react';
import { comparedAt } from '../build/compare';
import { leftOutOfBuild } from '../build/leftOut';
import type { Analysis, LayerFigures } from '../build/types';
import { useWorkbench } from '../canvas/bench';
import { everyDivision } from '../commands/operations/everyDivision';
import type { Layout } from '../layout/types';
import { zoningWords } from '../panels/division/stepText';
import { layoutAt } from '../layout/steps';
import { shownStep } from '../store/shown';
import {
  formatCm3,
  formatCount,
  formatField,
  formatHours,
  formatPercent,
  formatSeconds,
} from '../units/format';
import { Picture } from './compare/ColumnHead';
import { useAnalysed, type Found } from './compare/useAnalysed';
import { Sheet } from './Sheet';
import './compare/compare.css';

const PICTURE_PX = 200;

function Figures({ analysis, height_mm }: { readonly analysis: Analysis; readonly height_mm: number }) {
  const { build, layer, blocking } = comparedAt(analysis, height_mm);
  const leftOut = leftOutOfBuild(analysis);
  const here = (write: (figures: LayerFigures) => string): string => (layer ? write(layer) : '–');
  const rows: readonly (readonly [label: Text, value: string])[] = [
    ['build time', formatHours(build.time_h)],
    ...(leftOut ? [['left out', formatCm3(leftOut.volume_cm3)] as const] : []),
    ['exposure here', here(({ exposure_s }) => formatSeconds(exposure_s))],
    ['imbalance here', here(({ imbalanceTime_pct }) => formatPercent(imbalanceTime_pct))],
    ['seams here', here(({ seams }) => formatCount(seams.length))],
    ['blocking', formatCount(blocking ?? 0)],
  ];
  return (
    <dl className="division-figures">
      {rows.map(([label, value]) => (
        <div key={label} data-left-out={label === 'left out' || undefined}>
          <dt>{t(label)}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

interface CardProps {
  readonly layout: Layout;
  readonly found: Found;
  readonly present: boolean;
  readonly height_mm: number;
  onAdopt(): void;
}

function Card({ layout, found, present, height_mm, onAdopt }: CardProps) {
  const words = zoningWords(layoutAt(layout, shownStep(layout, height_mm)).zoning);
  return (
    <li className="division-card" data-present={present || undefined} data-testid="division-card">
      <h3>{words}</h3>
      <Picture found={found} width_px={PICTURE_PX} height_mm={height_mm} />
      {found !== null && found !== 'failed' && <Figures analysis={found} height_mm={height_mm} />}
      <button type="button" className="button" disabled={present} onClick={onAdopt}>
        {present ? t('as it is') : t('Take this one')}
      </button>
    </li>
  );
}

export default function DivisionsDialog({ onClose }: { onClose(): void }) {
  const bench = useWorkbench();
  const { layouts, height_mm } = useMemo(() => {
    const { layout, view } = bench.store.getState();
    return { layouts: everyDivision(layout, view.height_mm), height_mm: view.height_mm };
  }, [bench]);
  const found = useAnalysed(layouts);
  const adopt = ({ zoning }: Layout): void => {
    bench.change(t('Take over a division'), (layout) => ({ ...layout, zoning }));
    onClose();
  };
  return (
    <Sheet title={t('All divisions')} full onClose={onClose}>
      <p className="hint">
        {t(
          'The open plate at z {height} mm. Hours are of the whole build, estimates unvalidated by measurement for several lasers; no division is the best in everything.',
          { height: formatField(height_mm) },
        )}
      </p>
      <ul className="division-cards">
        {layouts.map((layout, i) => (
          <Card
            key={i}
            layout={layout}
            found={found[i] ?? null}
            present={i === 0}
            height_mm={height_mm}
            onAdopt={() => adopt(layout)}
          />
        ))}
      </ul>
    </Sheet>
  );
}
