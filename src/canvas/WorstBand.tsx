/** Where a figure of the build lights up the range of height that wastes most: a band across a view. Millimetres, px. */
import { useMemo } from 'react';
import { worstRange } from '../build/worst';
import type { Px } from '../units/types';
import { useAnalysisLater, useBench } from './bench';
import type { ZAxis } from './zAxis';

interface BandProps {
  readonly axis: ZAxis;
  readonly left: Px;
  readonly right: Px;
}

export function WorstBand({ axis, left, right }: BandProps) {
  const lit = useBench((state) => state.view.hover?.kind === 'worst');
  const { stretches, layout } = useAnalysisLater();
  const { minLayer_s } = layout.process;
  const worst = useMemo(() => (lit ? worstRange(stretches, minLayer_s) : null), [lit, stretches, minLayer_s]);
  if (worst === null) return null;
  const top = axis.toPx(Math.min(worst.to_mm, axis.top_mm));
  const height = Math.max(1, axis.toPx(worst.from_mm) - top);
  return (
    <rect
      className="time-room"
      data-testid="worst-band"
      x={left}
      y={top}
      width={Math.max(0, right - left)}
      height={height}
    />
  );
}
