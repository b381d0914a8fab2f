/**
 * The whole build, summed over its layers. Where no laser exposes part of it, every figure says what it leaves out;
 * where the whole height is not known yet, or only of an earlier plate, the head says so.
 */
import type { Analysis, BuildFigures } from '../../build/types';
import { useBench } from '../../canvas/bench';
import type { Layout } from '../../layout/types';
import { formatCm3, formatCount, formatHours, formatPercent } from '../../units/format';
import { correctedTime, totalVolume, UNCORRECTED } from './buildValues';
import { Figure } from './Figure';
import type { BuildFigureName } from './figureNames';
import type { LeftOut } from './leftOut';
import { leftOutHeights, leftOutOfBuild, leftOutVolume } from './leftOut';

interface Entry {
  readonly name: BuildFigureName;
  readonly label: string | ((layout: Layout) => string);
  readonly value: (build: BuildFigures, layout: Layout) => string;
}
/** The hours that the other way of recoating would take. */
const OTHER_WAY: Entry = {
  name: 'hours-other-way',
  label: ({ machine }) => (machine.recoater.mode === 'oneWay' ? 'Both ways' : 'One way'),
  value: (b, { machine }) =>
    formatHours(machine.recoater.mode === 'oneWay' ? b.timeBothWays_h : b.timeOneWay_h),
};
const CORRECTED: Entry = {
  name: 'build-corrected',
  label: 'Corrected',
  value: (b, layout) => {
    const { spread_pct } = layout.schedule?.correction ?? UNCORRECTED;
    return `${formatHours(correctedTime(layout, b))} ± ${formatPercent(spread_pct)}`;
  },
};
const ENTRIES: readonly Entry[] = [
  { name: 'build-hours', label: 'Build time', value: (b) => formatHours(b.time_h) },
  OTHER_WAY,
  { name: 'build-imbalance', label: 'Imbalance', value: (b) => formatPercent(b.imbalance_pct) },
  { name: 'build-exposure', label: 'Exposure', value: (b) => formatHours(b.exposure_h) },
  { name: 'held-hours', label: 'Held by minimum', value: (b) => formatHours(b.heldByMinLayer_h) },
  { name: 'laser-hours', label: 'Laser-hours', value: (b) => formatHours(b.load_laserH) },
  { name: 'idle-hours', label: 'Idle laser-hours', value: (b) => formatHours(b.idle_laserH) },
  { name: 'scan-volume', label: 'Scan volume', value: (b) => formatCm3(totalVolume(b)) },
];
/** Figures that say beside their number what they leave out; the head says it for the rest. */
const SAYING: readonly BuildFigureName[] = ['build-hours', 'build-imbalance'];

function headWords({ build, whole }: Analysis, left: LeftOut | null, progress: number | null): string {
  const far = progress === null ? '' : ` ${formatCount(100 * progress)} %`;
  if (whole === 'none') return `${build.layers} layers, being computed${far}`;
  if (whole === 'earlier') return `of the plate before; computing${far}`;
  if (whole === 'sampled') return `from a part of the layers; computing${far}`;
  return left === null
    ? `${build.layers} layers, all figures estimates`
    : `estimates ${leftOutVolume(left)}, ${leftOutHeights(left)}`;
}

export function BuildList({ analysis }: { readonly analysis: Analysis }) {
  const progress = useBench((state) => state.height.progress);
  const left = leftOutOfBuild(analysis);
  const missing = left === null ? undefined : leftOutVolume(left);
  const { layout } = analysis;
  const entries = layout.schedule === null ? ENTRIES : [...ENTRIES, CORRECTED];
  return (
    <section aria-label="Build">
      <h3 className="figures-head">
        BUILD{' '}
        <span data-warn={left !== null || undefined} data-testid="build-head">
          {headWords(analysis, left, progress)}
        </span>
      </h3>
      <div className="small-figures">
        {entries.map(({ name, label, value }) => (
          <Figure
            key={name}
            name={name}
            label={typeof label === 'string' ? label : label(layout)}
            value={analysis.whole === 'none' ? '…' : value(analysis.build, layout)}
            missing={SAYING.includes(name) ? missing : undefined}
          />
        ))}
      </div>
    </section>
  );
}
