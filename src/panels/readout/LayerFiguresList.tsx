/**
 * What the division costs in this layer: imbalance and layer time large, each with its neighbour beside it, the rest in
 * columns. What no laser exposes is missing from times and imbalance: they say so, and with every laser off they are dashes.
 */
import { t, type Text } from '../../language/index';
import type { LayerFigures } from '../../build/types';
import { formatCount, formatMm, formatMm2, formatPercent, formatSeconds } from '../../units/format';
import type { Lights } from '../lights';
import { Figure } from './Figure';
import type { LayerFigureName } from './figureNames';
import { leftOutOfLayer } from './leftOut';
import { NOTHING, nothingExposed } from './nothing';

/** Differences under a millisecond are rounding. */
const SMALLEST_COST_S = 5e-4;

function slowest(figures: LayerFigures | undefined): number {
  const loads = figures?.lasers.map((laser) => (laser.on ? laser.load_s : -1)) ?? [];
  return loads.indexOf(Math.max(...loads));
}
const cost = (figures: LayerFigures): string => {
  const rest = figures.exposure_s - figures.bestPossible_s;
  return formatSeconds(Math.abs(rest) < SMALLEST_COST_S ? 0 : rest);
};

interface ListProps {
  readonly figures: LayerFigures | undefined;
}
interface Entry {
  readonly name: LayerFigureName;
  readonly label: Text;
  readonly value: (figures: LayerFigures) => string;
  readonly lights?: Lights;
  /** It means nothing while every laser is off. */
  readonly timed?: boolean;
}

const shown = (
  figures: LayerFigures | undefined,
  { value, timed }: Pick<Entry, 'value' | 'timed'>,
): string =>
  figures === undefined || (timed === true && nothingExposed(figures) !== null) ? NOTHING : value(figures);

const PAIRS: readonly { readonly large: Entry; readonly beside: Entry }[] = [
  {
    large: {
      name: 'imbalance-time',
      label: 'Imbalance by time',
      value: (f) => formatPercent(f.imbalanceTime_pct),
      timed: true,
    },
    beside: {
      name: 'imbalance-area',
      label: 'by area',
      value: (f) => formatPercent(f.imbalanceArea_pct),
      timed: true,
    },
  },
  {
    large: {
      name: 'layer-time',
      label: 'Layer time, estimate',
      value: (f) => formatSeconds(f.time_s),
      timed: true,
    },
    beside: {
      name: 'exposure',
      label: 'exposure ¦ beside',
      value: (f) => formatSeconds(f.exposure_s),
      timed: true,
    },
  },
];

/** Imbalance and layer time; all of them light up the slowest laser, which sets them. */
export function LargeFigures({ figures }: ListProps) {
  const laser = slowest(figures);
  const lights: Lights = laser < 0 ? 'none' : `laser:${laser}`;
  const missing = nothingExposed(figures) ?? leftOutOfLayer(figures);
  return (
    <div className="large-figures">
      {PAIRS.map(({ large, beside }) => (
        <div className="large-pair" key={large.name}>
          <Figure
            look="large"
            name={large.name}
            label={t(large.label)}
            value={shown(figures, large)}
            lights={lights}
            missing={missing}
          />
          <Figure
            look="stack"
            name={beside.name}
            label={t(beside.label)}
            value={shown(figures, beside)}
            lights={lights}
            missing={missing}
          />
        </div>
      ))}
    </div>
  );
}

/** In pairs, as they stand side by side. */
const SMALL: readonly Entry[] = [
  { name: 'seam-count', label: 'Seams', value: (f) => formatCount(f.seams.length), lights: 'seams' },
  {
    name: 'unassigned',
    label: 'Unassigned',
    value: (f) => formatMm2(f.unassigned_mm2),
    lights: 'unassigned',
  },
  { name: 'seam-length', label: 'Seam length', value: (f) => formatMm(f.seamLength_mm), lights: 'seams' },
  {
    name: 'double-exposed',
    label: 'Exposed twice',
    value: (f) => formatMm2(f.doubleExposed_mm2),
    lights: 'seams',
  },
  { name: 'cut-parts', label: 'Cut parts', value: (f) => formatCount(f.cutParts), lights: 'seams' },
  {
    name: 'section-area',
    label: 'Section area',
    value: (f) => formatMm2(f.sectionArea_mm2),
    lights: 'sections',
  },
  {
    name: 'witness-lines',
    label: 'Witness lines',
    value: (f) => formatCount(f.witnessLines),
    lights: 'seams',
  },
  { name: 'cost-of-cutting', label: 'Cost of cutting', value: cost, lights: 'seams', timed: true },
];

/** The best possible with the lasers that set it, then seams and areas. */
export function SmallFigures({ figures }: ListProps) {
  const missing = leftOutOfLayer(figures);
  return (
    <div className="small-figures">
      <Figure
        name="best-possible"
        label={t('Best possible')}
        value={shown(figures, { value: (f) => formatSeconds(f.bestPossible_s), timed: true })}
        note={shown(figures, {
          value: (f) => nothingExposed(f) ?? t('set by {lasers}', { lasers: f.bestSetBy.join(' ') }),
        })}
        lights="binding"
        missing={nothingExposed(figures) === null ? missing : undefined}
      />
      {SMALL.map((entry) => (
        <Figure
          key={entry.name}
          name={entry.name}
          label={t(entry.label)}
          value={shown(figures, entry)}
          lights={entry.lights ?? 'none'}
          warn={entry.name === 'unassigned' && missing !== undefined}
        />
      ))}
    </div>
  );
}
