/**
 * The whole build, summed over its layers, and the plumes each beam crosses in this layer.
 */
import { memo, useDeferredValue, useMemo } from 'react';
import { downwindPlumes } from '../../build/downwind';
import type { Analysis, LayerFigures } from '../../build/types';
import { formatHours, formatNumber, formatPercent } from '../../units/format';
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
    <section aria-label="Plumes over each beam">
      <h3 className="figures-head">
        PLUMES OVER EACH BEAM <span>geometry only</span>
      </h3>
      <div className="plumes">
        {analysis.layout.machine.lasers.map(({ id }, laser) => (
          <Figure
            key={id}
            name={`plumes-${id}`}
            label={id}
            value={formatNumber(plumes[laser] ?? 0, 3, 2)}
            lights={`laser:${laser}`}
          />
        ))}
      </div>
    </section>
  );
});
