/**
 * The whole build, summed over its layers. Where no laser exposes part of it, every figure says what it leaves out;
 * where the whole height is not known yet, or only of an earlier plate, the head says so.
 */
import type { Analysis, BuildFigures } from '../../build/types';
import { useBench } from '../../canvas/bench';
import { formatCount, formatHours, formatPercent } from '../../units/format';
import { Figure } from './Figure';
import type { BuildFigureName } from './figureNames';
import type { LeftOut } from './leftOut';
import { leftOutHeights, leftOutOfBuild, leftOutVolume } from './leftOut';

interface Entry {
  readonly name: BuildFigureName;
  readonly label: string;
  readonly value: (build: BuildFigures) => string;
}
const ENTRIES: readonly Entry[] = [
  { name: 'build-hours', label: 'Build time', value: (b) => formatHours(b.time_h) },
  { name: 'build-imbalance', label: 'Imbalance', value: (b) => formatPercent(b.imbalance_pct) },
  { name: 'build-exposure', label: 'Exposure', value: (b) => formatHours(b.exposure_h) },
  { name: 'held-hours', label: 'Held by minimum', value: (b) => formatHours(b.heldByMinLayer_h) },
  { name: 'laser-hours', label: 'Laser-hours', value: (b) => formatHours(b.load_laserH) },
  { name: 'idle-hours', label: 'Idle laser-hours', value: (b) => formatHours(b.idle_laserH) },
];
/** Figures that say beside their number what they leave out; the head says it for the rest. */
const SAYING: readonly BuildFigureName[] = ['build-hours', 'build-imbalance'];

function headWords({ build, whole }: Analysis, left: LeftOut | null, progress: number | null): string {
  const far = progress === null ? '' : ` ${formatCount(100 * progress)} %`;
  if (whole === 'none') return `${build.layers} layers, being computed${far}`;
  if (whole === 'earlier') return `of the plate before; computing${far}`;
  return left === null
    ? `${build.layers} layers, all figures estimates`
    : `estimates ${leftOutVolume(left)}, ${leftOutHeights(left)}`;
}

export function BuildList({ analysis }: { readonly analysis: Analysis }) {
  const progress = useBench((state) => state.height.progress);
  const left = leftOutOfBuild(analysis);
  const missing = left === null ? undefined : leftOutVolume(left);
  return (
    <section aria-label="Build">
      <h3 className="figures-head">
        BUILD{' '}
        <span data-warn={left !== null || undefined} data-testid="build-head">
          {headWords(analysis, left, progress)}
        </span>
      </h3>
      <div className="small-figures">
        {ENTRIES.map(({ name, label, value }) => (
          <Figure
            key={name}
            name={name}
            label={label}
            value={analysis.whole === 'none' ? '…' : value(analysis.build)}
            missing={SAYING.includes(name) ? missing : undefined}
          />
        ))}
      </div>
    </section>
  );
}
