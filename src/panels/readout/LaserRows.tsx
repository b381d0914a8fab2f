/**
 * The lasers on one time axis: load solid in the laser's tint and hatching, idle as the gap to the slowest, one line at
 * the best possible through all rows, and the numbers at the end. A laser that is on and has nothing it may expose says
 * so in its row, and below them how to give it something.
 */
import { t, type Text } from '../../language/index';
import { memo, Suspense, type CSSProperties } from 'react';
import { useBench } from '../../canvas/bench';
import { divisionAt } from '../../canvas/layerAt';
import { hatchBackground, laserStyle } from '../../export/plan/palette';
import type { LaserFigures } from '../../build/types';
import { formatCount, formatField } from '../../units/format';
import type { Px, Seconds } from '../../units/types';
import { later } from '../../canvas/later';
import { useLayer } from '../useLayer';
import { useLightHandlers, useLit } from '../useLight';
import { useTheme } from '../../canvas/theme';
import type { TimeAxis } from './axis';
import { share, timeAxis } from './axis';
import { bareArea, bareSeconds } from './cellNumbers';
import { Figure } from './Figure';
import type { LaserFigureKind } from './figureNames';
import type { Lack } from './lack';
import { lackOf } from './lack';

const LackHints = later(() => import('./afterFigures').then((m) => m.LackHints));

interface BarProps {
  readonly laser: number;
  readonly on: boolean;
  readonly load: string;
  readonly slowest: string;
  readonly lack: Lack;
}

const Bar = memo(function Bar({ laser, on, load, slowest, lack }: BarProps) {
  const theme = useTheme();
  const light = useLightHandlers(`laser:${laser}`);
  const lit = useLit(`laser:${laser}`);
  const { stroke } = laserStyle(laser, theme);
  return (
    <div className="bar" data-lit={lit || undefined} {...light}>
      {on && lack === null && (
        <span className="bar-idle" style={{ left: load || 0, right: `calc(100% - ${slowest})` }} />
      )}
      {on && load !== '' && (
        <span
          className="bar-load"
          style={{ width: load, background: hatchBackground(laser, theme), borderColor: stroke }}
        />
      )}
      {lack !== null && <span className="bar-lack">{t(lack)}</span>}
    </div>
  );
});

interface Cell {
  readonly kind: LaserFigureKind;
  readonly label: (id: string) => string;
  readonly value: (own: LaserFigures) => string;
}
const CELLS: readonly Cell[] = [
  {
    kind: 'load',
    label: (id) => t('Load of {id} in seconds', { id }),
    value: ({ on, load_s }) => (on ? bareSeconds(load_s) : t('off')),
  },
  {
    kind: 'area',
    label: (id) => t('Scan area of {id} in square millimetres', { id }),
    value: ({ scanArea_mm2 }) => bareArea(scanArea_mm2),
  },
  {
    kind: 'idle',
    label: (id) => t('Idle of {id} in seconds', { id }),
    value: ({ idle_s }) => bareSeconds(idle_s),
  },
  { kind: 'pieces', label: (id) => t('Pieces of {id}', { id }), value: ({ pieces }) => formatCount(pieces) },
];

interface LaserRowProps {
  readonly laser: number;
  readonly own: LaserFigures;
  readonly axis: TimeAxis;
  readonly slowest_s: Seconds;
  readonly lack: Lack;
}

function LaserRow({ laser, own, axis, slowest_s, lack }: LaserRowProps) {
  const lights = `laser:${laser}` as const;
  return (
    <div className="laser-row" data-off={!own.on || undefined}>
      <Figure
        look="cell"
        name={`laser-${own.id}`}
        label={lack === null ? t('Laser') : t('Laser, {lack}', { lack: t(lack) })}
        value={own.id}
        lights={lights}
        warn={lack !== null}
      />
      <Bar
        laser={laser}
        on={own.on}
        load={own.load_s > 0 ? share(axis, own.load_s) : ''}
        slowest={share(axis, slowest_s)}
        lack={lack}
      />
      {CELLS.map(({ kind, label, value }) => (
        <Figure
          key={kind}
          look="cell"
          name={`${kind}-${own.id}`}
          label={label(own.id)}
          value={value(own)}
          lights={lights}
        />
      ))}
    </div>
  );
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

/** A laser of an empty plate. */
const idle = ({ id, on }: Pick<LaserFigures, 'id' | 'on'>): LaserFigures => ({
  id,
  on,
  scanArea_mm2: 0,
  outline_mm: 0,
  pieces: 0,
  load_s: 0,
  idle_s: 0,
});

const HEADS: readonly (Text | '')[] = ['', 'time, s', 'load s', 'area mm²', 'idle s', 'pcs'];

function Head() {
  return (
    <div className="laser-row laser-head" aria-hidden="true">
      {HEADS.map((words) => (
        <span key={words}>{words === '' ? '' : t(words)}</span>
      ))}
    </div>
  );
}

const DIGIT_PX: Px = 8;
const LEAST_PIECES_PX: Px = 24;
/** The last column's width: as many digits as the largest count has. */
const piecesWidth = (lasers: readonly LaserFigures[]): string => {
  const digits = Math.max(...lasers.map(({ pieces }) => formatCount(pieces).length));
  return `${Math.max(LEAST_PIECES_PX, DIGIT_PX * digits)}px`;
};

/** Rows of all lasers of the machine, the ones that are off included. */
export function LaserRows() {
  const { analysis, figures } = useLayer();
  const height_mm = useBench((state) => state.view.height_mm);
  const division = divisionAt(analysis, height_mm);
  const axis = timeAxis(figures);
  const lasers = figures?.lasers ?? analysis.layout.machine.lasers.map(idle);
  const best = figures === undefined ? null : share(axis, figures.bestPossible_s);
  return (
    <section
      className="laser-rows"
      aria-label={t('Lasers on one time axis')}
      style={{ '--pieces': piecesWidth(lasers) } as CSSProperties}
    >
      <Head />
      <div className="laser-body">
        {lasers.map((own, laser) => (
          <LaserRow
            key={own.id}
            laser={laser}
            own={own}
            axis={axis}
            slowest_s={figures?.exposure_s ?? 0}
            lack={lackOf(division, laser)}
          />
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
      {lasers.some((_, laser) => lackOf(division, laser) !== null) && (
        <Suspense fallback={null}>
          <LackHints division={division} />
        </Suspense>
      )}
    </section>
  );
}
