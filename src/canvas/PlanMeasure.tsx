/**
 * What was measured, as a drawing writes it: a dimension line with its length above, the ends marked, and the whole in words at
 * the foot of the plan; and, with the tool in hand, what the next press would be caught by. Screen px; numbers are millimetres.
 */
import { useStore } from 'zustand';
import { t } from '../language/index';
import type { Measured, Workbench } from '../store/types';
import { formatMm } from '../units/format';
import type { PlatePoint, ScreenPoint } from '../units/types';
import { useBench, useWorkbench } from './bench';
import { toScreen, type Size } from './camera';
import type { Caught, CaughtBy } from './catching';
import type { PlanHost } from './gestures/gesture';
import { measuredWords } from './measuredWords';
import { Dimension } from './PlanMarks';

const END_PX = 4;

/** A corner is a square, a centre a cross in a circle, what runs along a line a short stroke across. */
const SIGNS: Readonly<Record<CaughtBy, string>> = {
  corner: 'M-5 -5h10v10h-10z',
  centre: 'M-5 0a5 5 0 1 0 10 0a5 5 0 1 0 -10 0M-8 0h16M0 -8v16',
  edge: 'M-5 -5l10 10M-5 5l10 -10',
  line: 'M-5 -5l10 10M-5 5l10 -10',
  grid: 'M-6 0h12M0 -6v12',
};

function CaughtSign({ caught, place }: { readonly caught: Caught; place(p: PlatePoint): ScreenPoint }) {
  const { left, top } = place(caught.at);
  return (
    <g transform={`translate(${left} ${top})`} data-testid="caught" data-by={caught.by}>
      <path d={SIGNS[caught.by]} className="mark-halo" />
      <path d={SIGNS[caught.by]} />
    </g>
  );
}

function End({ at }: { readonly at: ScreenPoint }) {
  return <circle cx={at.left} cy={at.top} r={END_PX} className="measure-end" />;
}

/** Pages served without TLS have no clipboard, and a browser may refuse it. */
async function copy(bench: Workbench, words: string): Promise<void> {
  try {
    await navigator.clipboard.writeText(words);
  } catch {
    bench.notify({ code: 'clip-not-written', params: {} });
  }
}

function Words({ measured }: { readonly measured: Measured }) {
  const bench = useWorkbench();
  const words = measuredWords(measured);
  return (
    <p className="plan-measure">
      <span data-testid="measured">{words}</span>
      <button type="button" className="button" onClick={() => void copy(bench, words)}>
        {t('Copy')}
      </button>
      <button
        type="button"
        className="button"
        aria-label={t('Put the measure away')}
        onClick={() => bench.setView({ measured: null })}
      >
        ×
      </button>
    </p>
  );
}

export function PlanMeasure({ host, size }: { readonly host: PlanHost; readonly size: Size }) {
  const measured = useBench((state) => state.view.measured);
  const measuring = useBench((state) => state.view.tool === 'measure');
  const caught = useStore(host.ui, (ui) => ui.caught);
  const place = (p: PlatePoint): ScreenPoint => toScreen(p, host.camera(), size);
  const sign = measuring ? caught : null;
  if (measured === null && sign === null) return null;
  return (
    <>
      <svg className="plan-marks" width={size.width} height={size.height} aria-hidden="true">
        {measured && (
          <>
            <Dimension
              from={place(measured.from)}
              to={place(measured.to)}
              text={formatMm(Math.hypot(measured.to.x - measured.from.x, measured.to.y - measured.from.y))}
            />
            <End at={place(measured.from)} />
            <End at={place(measured.to)} />
          </>
        )}
        {sign && <CaughtSign caught={sign} place={place} />}
      </svg>
      {measured && <Words measured={measured} />}
    </>
  );
}
