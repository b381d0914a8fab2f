/**
 * The whole build, summed over its layers. Where no laser exposes part of it, every figure says what it leaves out;
 * where the whole height is not known yet, or only of an earlier plate, the head says so.
 */
import { t, type Text } from '../../language/index';
import type { Analysis, BuildFigures } from '../../build/types';
import { useBench } from '../../canvas/bench';
import type { Layout } from '../../layout/types';
import { formatCm3, formatCount, formatHours, formatPercent } from '../../units/format';
import { correctedTime, totalVolume, UNCORRECTED } from './buildValues';
import { Figure } from './Figure';
import type { BuildFigureName } from './figureNames';
import type { HeightState } from '../../store/types';
import type { LeftOut } from './leftOutBuild';
import { leftOutHeights, leftOutOfBuild, leftOutVolume } from './leftOutBuild';
import { NOTHING, nothingBuilt } from './nothing';

interface Entry {
  readonly name: BuildFigureName;
  readonly label: Text | ((layout: Layout) => Text);
  readonly value: (build: BuildFigures, layout: Layout) => string;
  readonly place?: 'third' | 'right';
}
/** The hours that the other way of recoating would take. */
const OTHER_WAY: Entry = {
  name: 'hours-other-way',
  place: 'third',
  label: ({ machine }) => (machine.recoater.mode === 'oneWay' ? 'Both ways' : 'One way'),
  value: (b, { machine }) =>
    formatHours(machine.recoater.mode === 'oneWay' ? b.timeBothWays_h : b.timeOneWay_h),
};
const CORRECTED: Entry = {
  name: 'build-corrected',
  place: 'right',
  label: 'Corrected',
  value: (b, layout) => {
    const { spread_pct } = layout.schedule?.correction ?? UNCORRECTED;
    return `${formatHours(correctedTime(layout, b))} ± ${formatPercent(spread_pct)}`;
  },
};
const ENTRIES: readonly Entry[] = [
  { name: 'build-hours', label: 'Build time', value: (b) => formatHours(b.time_h) },
  OTHER_WAY,
  {
    name: 'build-imbalance',
    label: 'Imbalance',
    value: (b) => formatPercent(b.imbalance_pct),
    place: 'third',
  },
  { name: 'build-exposure', label: 'Exposure', value: (b) => formatHours(b.exposure_h), place: 'third' },
  { name: 'held-hours', label: 'Held by minimum', value: (b) => formatHours(b.heldByMinLayer_h) },
  { name: 'laser-hours', label: 'Laser-hours', value: (b) => formatHours(b.load_laserH), place: 'right' },
  { name: 'idle-hours', label: 'Idle laser-hours', value: (b) => formatHours(b.idle_laserH) },
  { name: 'scan-volume', label: 'Scan volume', value: (b) => formatCm3(totalVolume(b)), place: 'right' },
];
/** Figures that say beside their number what they leave out; the head says it for the rest. */
const SAYING: readonly BuildFigureName[] = [
  'build-hours',
  'build-corrected',
  'hours-other-way',
  'build-imbalance',
  'build-exposure',
  'laser-hours',
];

function headWords(
  { build, whole, layout }: Analysis,
  left: LeftOut | null,
  { progress, failed }: HeightState,
): string {
  const nothing = nothingBuilt(layout);
  if (nothing !== null) return nothing;
  if (failed && whole !== 'present') return t('of the whole height: not computed');
  const far = progress === null ? '' : ` ${formatCount(100 * progress)} %`;
  if (whole === 'none') return t('{layers} layers, being computed{far}', { layers: build.layers, far });
  if (whole === 'earlier') return t('of the plate before; computing{far}', { far });
  if (whole === 'sampled') return t('from a part of the layers; computing{far}', { far });
  return left === null
    ? t('{layers} layers, all figures estimates', { layers: build.layers })
    : t('estimates {left}, {left2}', { left: leftOutVolume(left), left2: leftOutHeights(left) });
}

export function BuildList({ analysis }: { readonly analysis: Analysis }) {
  const height = useBench((state) => state.height);
  const left = leftOutOfBuild(analysis);
  const { layout } = analysis;
  const nothing = nothingBuilt(layout);
  const missing = left === null || nothing !== null ? undefined : leftOutVolume(left);
  const more = layout.schedule !== null;
  const entries = more ? ENTRIES.toSpliced(1, 0, CORRECTED) : ENTRIES;
  return (
    <section aria-label={t('Build')}>
      <h3 className="figures-head">
        {t('BUILD')}{' '}
        <span data-warn={left !== null || undefined} data-testid="build-head">
          {headWords(analysis, left, height)}
        </span>
      </h3>
      <div className="small-figures" data-more={more || undefined}>
        {entries.map(({ name, label, value, place }) => (
          <Figure
            key={name}
            name={name}
            label={t(typeof label === 'string' ? label : label(layout))}
            value={
              nothing !== null ? NOTHING : analysis.whole === 'none' ? '…' : value(analysis.build, layout)
            }
            place={place}
            lights="worst"
            missing={SAYING.includes(name) ? missing : undefined}
          />
        ))}
      </div>
    </section>
  );
}
