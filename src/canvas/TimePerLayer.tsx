/**
 * Time per layer over the height: z upward as in the elevation beside it, seconds to the right. The lasers' mean load, their
 * idle gap to the slowest, recoating and waiting for the minimum layer time as areas, the best possible exposure as a
 * line. Hovering shows the plate and a stretch's figures at that height; pressing or dragging sets it.
 */
import { t, type Text } from '../language/index';
import { memo, useMemo, useRef } from 'react';
import type { Stretch } from '../build/types';
import { formatMm, formatSeconds } from '../units/format';
import type { Px, Seconds } from '../units/types';
import { useAnalysisLater, useBench } from './bench';
import './elevation.css';
import { useHeightPointer } from './heightPointer';
import { tickLabel, ticks } from '../export/plan/ruler';
import { StepLines } from './StepHandles';
import { areaPath, bestPath, meanLoad, TIME_KINDS, type ChartFrame } from './timeChart';
import { useSize } from './viewport';
import { WorstBand } from './WorstBand';
import { zAxis, type ZAxis } from './zAxis';

const LEFT_PX = 12;
const RIGHT_PX = 16;
const LEGEND_ROW_PX = 12;
/** At the end of the axis stands its unit: no number comes closer. */
const UNIT_PX = 28;

function TimeAxis({ frame, most_s }: { frame: ChartFrame; most_s: Seconds }) {
  const base = frame.axis.toPx(0);
  return (
    <g>
      <line x1={LEFT_PX} x2={frame.width - RIGHT_PX} y1={base} y2={base} />
      <line x1={LEFT_PX} x2={LEFT_PX} y1={frame.axis.toPx(frame.axis.top_mm)} y2={base} />
      {ticks(0, most_s, frame.pxPerSecond, 48).map(({ value, major }) => (
        <g key={value}>
          <line x1={frame.toX(value)} x2={frame.toX(value)} y1={base} y2={base + (major ? 8 : 4)} />
          {major && frame.toX(value) <= frame.width - UNIT_PX && (
            <text x={frame.toX(value)} y={base + 20} textAnchor="middle">
              {tickLabel(value)}
            </text>
          )}
        </g>
      ))}
      <text x={frame.width - 4} y={base + 20} textAnchor="end">
        s
      </text>
    </g>
  );
}

const LEGEND: readonly { readonly kind: string; readonly words: Text }[] = [
  { kind: 'load', words: 'mean load ¦ legend' },
  { kind: 'idle', words: 'idle ¦ legend' },
  { kind: 'recoat', words: 'recoat ¦ legend' },
  { kind: 'wait', words: 'wait ¦ legend' },
];
/** Room of an entry: its sign and the gap behind it, and each letter. */
const ENTRY_PX: Px = 22;
const LETTER_PX: Px = 6.2;

/** Where each entry begins, and behind the last where the next would. */
function entryPlaces(): readonly Px[] {
  const places: Px[] = [0];
  for (const { words } of LEGEND) places.push(places.at(-1)! + ENTRY_PX + LETTER_PX * t(words).length);
  return places;
}

function Legend() {
  const places = entryPlaces();
  return (
    <g transform={`translate(${LEFT_PX}, 0)`}>
      {LEGEND.map(({ kind, words }, i) => (
        <g key={kind} transform={`translate(${places[i]}, 0)`}>
          <rect className={`time-bar time-${kind}`} x={0.5} y={2.5} width={10} height={9} />
          <text x={14} y={LEGEND_ROW_PX}>
            {t(words)}
          </text>
        </g>
      ))}
      <g transform={`translate(${places.at(-1)}, 0)`}>
        <line className="time-best" x1={1} x2={1} y1={2} y2={13} />
        <text x={6} y={LEGEND_ROW_PX}>
          {t('best ¦ legend')}
        </text>
      </g>
    </g>
  );
}

const figureLines = ({ figures, ...stretch }: Stretch): readonly string[] => [
  t('z {from} to {to}, layers {firstLayer}–{lastLayer}', {
    from: formatMm(stretch.from_mm),
    to: formatMm(stretch.to_mm),
    firstLayer: stretch.firstLayer,
    lastLayer: stretch.lastLayer,
  }),
  t('exposure {exposure}, mean load {mean}', {
    exposure: formatSeconds(figures.exposure_s),
    mean: formatSeconds(meanLoad(figures)),
  }),
  t('best possible {bestPossible}', { bestPossible: formatSeconds(figures.bestPossible_s) }),
  t('recoat {recoat}, wait {wait}', {
    recoat: formatSeconds(figures.recoat_s),
    wait: formatSeconds(figures.wait_s),
  }),
];

/** Areas and line of all stretches; they change with the plate, not with the pointer. */
const Areas = memo(({ stretches, frame }: { stretches: readonly Stretch[]; frame: ChartFrame }) => (
  <g>
    {TIME_KINDS.map((kind) => (
      <path key={kind} className={`time-bar time-${kind}`} d={areaPath(stretches, kind, frame)} />
    ))}
    <path className="time-best" d={bestPath(stretches, frame)} />
  </g>
));

/** The stretch under the pointer. */
function Lit({ stretch, frame }: { stretch: Stretch; frame: ChartFrame }) {
  const top = frame.axis.toPx(Math.min(stretch.to_mm, frame.axis.top_mm));
  const height = Math.max(1, frame.axis.toPx(stretch.from_mm) - top);
  return <rect className="time-room" x={LEFT_PX} y={top} width={frame.width - LEFT_PX} height={height} />;
}

/** The frame that the stretches fill; the same object while neither they nor the view's size change. */
function useFrame(stretches: readonly Stretch[], axis: ZAxis, width: Px): ChartFrame & { most_s: Seconds } {
  return useMemo(() => {
    const most_s = stretches.reduce((most, { figures }) => Math.max(most, figures.time_s), 1);
    const pxPerSecond = Math.max(1, width - LEFT_PX - RIGHT_PX) / most_s;
    return { axis, width, pxPerSecond, most_s, toX: (s) => LEFT_PX + s * pxPerSecond };
  }, [stretches, axis, width]);
}

export function TimePerLayer() {
  const element = useRef<HTMLDivElement>(null);
  const size = useSize(element);
  const { stretches, build, whole } = useAnalysisLater();
  const height = useBench((state) => state.view.height_mm);
  const axis = useMemo(() => zAxis(build.height_mm, size.height), [build.height_mm, size.height]);
  const { hovered_mm, kept_mm, handlers } = useHeightPointer(axis);
  const frame = useFrame(stretches, axis, size.width);
  const shown = hovered_mm === null ? undefined : stretches.find(({ to_mm }) => hovered_mm < to_mm);
  const y = axis.toPx(height);
  return (
    <div
      ref={element}
      className="times-canvas"
      data-testid="times-view"
      data-whole={whole}
      {...(build.layers > 0 && handlers)}
    >
      {size.width > 0 && (
        <svg
          width={size.width}
          height={size.height}
          role="img"
          aria-label={t('Time per layer over the height')}
        >
          <defs>
            <pattern id="recoat-lines" width="4" height="4" patternUnits="userSpaceOnUse">
              <line className="time-recoat-line" x1="0.5" x2="0.5" y1="0" y2="4" />
            </pattern>
          </defs>
          <WorstBand axis={axis} left={LEFT_PX} right={size.width} />
          {shown && <Lit stretch={shown} frame={frame} />}
          <Areas stretches={stretches} frame={frame} />
          <StepLines axis={axis} left={LEFT_PX} right={size.width} />
          <TimeAxis frame={frame} most_s={frame.most_s} />
          <Legend />
          {kept_mm !== null && (
            <line
              className="time-kept"
              x1={0}
              x2={size.width}
              y1={axis.toPx(kept_mm)}
              y2={axis.toPx(kept_mm)}
            />
          )}
          {build.layers > 0 && <line className="time-height" x1={0} x2={size.width} y1={y} y2={y} />}
        </svg>
      )}
      {shown && (
        <div className={`plan-tip times-tip ${hovered_mm! * 2 > axis.top_mm ? 'times-tip-low' : ''}`}>
          {figureLines(shown).map((words) => (
            <div key={words}>{words}</div>
          ))}
          {kept_mm !== null && <div>{t('a press sets this height')}</div>}
        </div>
      )}
    </div>
  );
}
