/**
 * The whole build, summed over its layers.
 */
import type { Analysis } from '../../build/types';
import { formatHours, formatPercent } from '../../units/format';
import { Figure } from './Figure';

export function BuildList({ analysis }: { readonly analysis: Analysis }) {
  const { build } = analysis;
  return (
    <section aria-label="Build">
      <h3 className="figures-head">
        BUILD <span>{build.layers} layers, all figures estimates</span>
      </h3>
      <div className="small-figures">
        <Figure name="build-hours" label="Build time" value={formatHours(build.time_h)} />
        <Figure name="build-imbalance" label="Imbalance" value={formatPercent(build.imbalance_pct)} />
        <Figure name="held-hours" label="Held by minimum" value={formatHours(build.heldByMinLayer_h)} />
        <Figure name="build-exposure" label="Exposure" value={formatHours(build.exposure_h)} />
        <Figure name="laser-hours" label="Laser-hours" value={formatHours(build.load_laserH)} />
        <Figure name="idle-hours" label="Idle laser-hours" value={formatHours(build.idle_laserH)} />
      </div>
    </section>
  );
}
