/**
 * The lasers on one time axis: load solid in the laser's tint and hatching, idle as the gap to the slowest, one line at
 * the best possible through all rows, and the numbers at the end.
 */
import { memo } from 'react';
import { hatchBackground, laserStyle } from '../../canvas/palette';
import type { LaserFigures } from '../../build/types';
import { formatCount, formatField, formatNumber } from '../../units/format';
import type { Mm2, Seconds } from '../../units/types';
import { useLayer } from '../useLayer';
import { useLightHandlers, useLit } from '../useLight';
import { useTheme } from '../../canvas/theme';
import type { TimeAxis } from './axis';
import { share, timeAxis } from './axis';
import { Figure } from './Figure';

interface BarProps {
  readonly laser: number;
  readonly on: boolean;
  readonly load: string;
  readonly slowest: string;
}

const Bar = memo(function Bar({ laser, on, load, slowest }: BarProps) {
  const theme = useTheme();
  const light = useLightHandlers(`laser:${laser}`);
  const lit = useLit(`laser:${laser}`);
  const { stroke } = laserStyle(laser, theme);
  return (
    <div className="bar" data-lit={lit || undefined} {...light}>
      {on && <span className="bar-idle" style={{ left: load || 0, right: `calc(100% - ${slowest})` }} />}
      {on && load !== '' && (
        <span
          className="bar-load"
          style={{ width: load, background: hatchBackground(laser, theme), borderColor: stroke }}
        />
      )}
    </div>
  );
});

const bare = (value: number, digits = 4): string => formatNumber(value, digits, 2);
const bareSeconds = (value: Seconds): string => bare(value);
const bareArea = (value: Mm2): string => formatNumber(value, 5, 1);

function LaserRow({ laser, own, axis, slowest_s }: LaserRowProps) {
  const lights = `laser:${laser}` as const;
  return (
    <div className="laser-row" data-off={!own.on || undefined}>
      <span className="laser-name">{own.id}</span>
      <Bar
        laser={laser}
        on={own.on}
        load={own.load_s > 0 ? share(axis, own.load_s) : ''}
        slowest={share(axis, slowest_s)}
      />
      <Figure
        look="cell"
        name={`load-${own.id}`}
        label={`Load of ${own.id} in seconds`}
        value={own.on ? bareSeconds(own.load_s) : 'off'}
        lights={lights}
      />
      <Figure
        look="cell"
        name={`area-${own.id}`}
        label={`Scan area of ${own.id} in square millimetres`}
        value={bareArea(own.scanArea_mm2)}
        lights={lights}
      />
      <Figure
        look="cell"
        name={`idle-${own.id}`}
        label={`Idle of ${own.id} in seconds`}
        value={bareSeconds(own.idle_s)}
        lights={lights}
      />
      <Figure
        look="cell"
        name={`pieces-${own.id}`}
        label={`Pieces of ${own.id}`}
        value={formatCount(own.pieces)}
        lights={lights}
      />
    </div>
  );
}
interface LaserRowProps {
  readonly laser: number;
  readonly own: LaserFigures;
  readonly axis: TimeAxis;
  readonly slowest_s: Seconds;
}

function Axis({ axis }: { readonly axis: TimeAxis }) {
  return (
    <div className="time-axis" aria-hidden="true">
      {axis.ticks_s.map((tick) => (
        <span key={tick} style={{ left: share(axis, tick) }}>
          {formatField(tick)}
        </span>
      ))}
    </div>
  );
}

/** Rows of all lasers of the machine, the ones that are off included. */
export function LaserRows() {
  const { analysis, figures } = useLayer();
  const axis = timeAxis(figures);
  const lasers: readonly LaserFigures[] =
    figures?.lasers ??
    analysis.layout.machine.lasers.map(({ id, on }) => ({
      id,
      on,
      scanArea_mm2: 0,
      outline_mm: 0,
      pieces: 0,
      load_s: 0,
      idle_s: 0,
    }));
  const exposure_s = figures?.exposure_s ?? 0;
  const best = figures === undefined ? null : share(axis, figures.bestPossible_s);
  return (
    <section className="laser-rows" aria-label="Lasers on one time axis">
      <div className="laser-row laser-head" aria-hidden="true">
        <span />
        <span>time, s</span>
        <span>load s</span>
        <span>area mm²</span>
        <span>idle s</span>
        <span>pcs</span>
      </div>
      <div className="laser-body">
        {lasers.map((own, laser) => (
          <LaserRow key={own.id} laser={laser} own={own} axis={axis} slowest_s={exposure_s} />
        ))}
        {best !== null && (
          <span className="best-track" aria-hidden="true">
            <span className="best-line" style={{ left: best }} />
          </span>
        )}
      </div>
      <div className="laser-row">
        <span />
        <Axis axis={axis} />
      </div>
    </section>
  );
}
