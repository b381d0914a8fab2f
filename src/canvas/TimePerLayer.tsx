/**
 * Time per layer over the height: z upward as in the elevation beside it, seconds to the right. Per stretch of equal
 * sections: the lasers' mean load, their idle gap to the slowest, recoating, waiting for the minimum layer time, and a
 * line at the best possible exposure. Hovering shows a stretch's figures; pressing or dragging sets the height.
 */
import { useMemo, useRef, useState, type PointerEvent } from 'react';
import type { LayerTotals, Stretch } from '../build/types';
import { formatMm, formatSeconds } from '../units/format';
import type { Px, Seconds } from '../units/types';
import { useAnalysisLater, useBench, useWorkbench } from './bench';
import './elevation.css';
import { setHeightAt } from './HeightLine';
import { tickLabel, ticks } from './ruler';
import { useSize } from './viewport';
import { zAxis, type ZAxis } from './zAxis';

const LEFT_PX = 12;
const RIGHT_PX = 16;
const LEGEND_ROW_PX = 12;
/** At the end of the axis stands its unit: no number comes closer. */
const UNIT_PX = 28;

/** Mean load of the lasers that are on: where idle begins. */
export const meanLoad = (figures: LayerTotals): Seconds => {
  const on = figures.lasers.filter((laser) => laser.on);
  return on.length === 0 ? 0 : on.reduce((sum, laser) => sum + laser.load_s, 0) / on.length;
};

export interface Bar {
  readonly kind: 'load' | 'idle' | 'recoat' | 'wait';
  readonly from_s: Seconds;
  readonly to_s: Seconds;
}

/** A layer's time from left to right; parts of no length are left out. Together they are the layer's time. */
export const layerBars = (figures: LayerTotals): readonly Bar[] => {
  const load = meanLoad(figures);
  const { exposure_s, recoat_s, wait_s } = figures;
  const ends = [0, load, exposure_s, exposure_s + recoat_s, exposure_s + recoat_s + wait_s];
  const kinds = ['load', 'idle', 'recoat', 'wait'] as const;
  return kinds
    .map((kind, i) => ({ kind, from_s: ends[i], to_s: ends[i + 1] }))
    .filter((bar) => bar.to_s - bar.from_s > 1e-9);
};

interface Frame {
  readonly axis: ZAxis;
  readonly width: Px;
  readonly pxPerSecond: number;
  toX(seconds: Seconds): Px;
}

function StretchBar({
  stretch,
  frame,
  onHover,
}: {
  stretch: Stretch;
  frame: Frame;
  onHover: (on: boolean) => void;
}) {
  const { axis } = frame;
  const top = axis.toPx(Math.min(stretch.to_mm, axis.top_mm));
  const height = Math.max(1, axis.toPx(stretch.from_mm) - top);
  const best = frame.toX(stretch.figures.bestPossible_s);
  return (
    <g className="time-stretch" onPointerEnter={() => onHover(true)} onPointerLeave={() => onHover(false)}>
      <rect className="time-room" x={LEFT_PX} y={top} width={frame.width - LEFT_PX} height={height} />
      {layerBars(stretch.figures).map((bar) => (
        <rect
          key={bar.kind}
          className={`time-bar time-${bar.kind}`}
          x={frame.toX(bar.from_s)}
          y={top}
          width={(bar.to_s - bar.from_s) * frame.pxPerSecond}
          height={height}
        />
      ))}
      <line className="time-best" x1={best} x2={best} y1={top - 2} y2={top + height + 2} />
    </g>
  );
}

function TimeAxis({ frame, most_s }: { frame: Frame; most_s: Seconds }) {
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

const LEGEND = [
  { kind: 'load', words: 'mean load', at: 0 },
  { kind: 'idle', words: 'idle', at: 84 },
  { kind: 'recoat', words: 'recoat', at: 128 },
  { kind: 'wait', words: 'wait', at: 190 },
] as const;

function Legend() {
  return (
    <g transform={`translate(${LEFT_PX}, 0)`}>
      {LEGEND.map(({ kind, words, at }) => (
        <g key={kind} transform={`translate(${at}, 0)`}>
          <rect className={`time-bar time-${kind}`} x={0.5} y={2.5} width={10} height={9} />
          <text x={14} y={LEGEND_ROW_PX}>
            {words}
          </text>
        </g>
      ))}
      <g transform="translate(238, 0)">
        <line className="time-best" x1={1} x2={1} y1={2} y2={13} />
        <text x={6} y={LEGEND_ROW_PX}>
          best
        </text>
      </g>
    </g>
  );
}

const figureLines = ({ figures, ...stretch }: Stretch): readonly string[] => [
  `z ${formatMm(stretch.from_mm)} to ${formatMm(stretch.to_mm)}, layers ${stretch.firstLayer}–${stretch.lastLayer}`,
  `exposure ${formatSeconds(figures.exposure_s)}, mean load ${formatSeconds(meanLoad(figures))}`,
  `best possible ${formatSeconds(figures.bestPossible_s)}`,
  `recoat ${formatSeconds(figures.recoat_s)}, wait ${formatSeconds(figures.wait_s)}`,
];

/** Presses and drags set the height. */
function useHeightPress(axis: ZAxis) {
  const bench = useWorkbench();
  const pressed = useRef(false);
  const set = (event: PointerEvent<HTMLDivElement>) =>
    setHeightAt(bench, axis, event.clientY - event.currentTarget.getBoundingClientRect().top);
  const stop = () => {
    pressed.current = false;
  };
  return {
    onPointerDown: (event: PointerEvent<HTMLDivElement>) => {
      if (event.button !== 0) return;
      event.currentTarget.setPointerCapture(event.pointerId);
      pressed.current = true;
      set(event);
    },
    onPointerMove: (event: PointerEvent<HTMLDivElement>) => {
      if (pressed.current) set(event);
    },
    onPointerUp: stop,
    onPointerCancel: stop,
    onLostPointerCapture: stop,
  };
}

export function TimePerLayer() {
  const element = useRef<HTMLDivElement>(null);
  const size = useSize(element);
  const { stretches, build } = useAnalysisLater();
  const height = useBench((state) => state.view.height_mm);
  const [hovered, setHovered] = useState<number | null>(null);
  const axis = useMemo(() => zAxis(build.height_mm, size.height), [build.height_mm, size.height]);
  const handlers = useHeightPress(axis);
  const most_s = Math.max(1, ...stretches.map(({ figures }) => figures.time_s));
  const pxPerSecond = Math.max(1, size.width - LEFT_PX - RIGHT_PX) / most_s;
  const frame: Frame = { axis, width: size.width, pxPerSecond, toX: (s) => LEFT_PX + s * pxPerSecond };
  const shown = hovered === null ? undefined : stretches[hovered];
  const y = axis.toPx(height);
  return (
    <div ref={element} className="times-canvas" data-testid="times-view" {...handlers}>
      {size.width > 0 && (
        <svg width={size.width} height={size.height} role="img" aria-label="Time per layer over the height">
          <defs>
            <pattern id="recoat-lines" width="4" height="4" patternUnits="userSpaceOnUse">
              <line className="time-recoat-line" x1="0.5" x2="0.5" y1="0" y2="4" />
            </pattern>
          </defs>
          {stretches.map((stretch, i) => (
            <StretchBar
              key={stretch.firstLayer}
              stretch={stretch}
              frame={frame}
              onHover={(on) => setHovered(on ? i : null)}
            />
          ))}
          <TimeAxis frame={frame} most_s={most_s} />
          <Legend />
          {build.layers > 0 && <line className="time-height" x1={0} x2={size.width} y1={y} y2={y} />}
        </svg>
      )}
      {shown && (
        <div className="plan-tip times-tip">
          {figureLines(shown).map((words) => (
            <div key={words}>{words}</div>
          ))}
        </div>
      )}
    </div>
  );
}
