/**
 * Words about the part under the resting pointer: which lasers expose it in the layer shown, and how slantwise each
 * strikes it at most. Degrees; the spot as a multiple of its length straight below the scanner.
 */
import { t } from '../language/index';
import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { incidences } from '../build/incidence';
import type { Analysis, LayerFigures } from '../build/types';
import type { PartId } from '../layout/types';
import { formatDegrees, formatNumber } from '../units/format';
import { useBench } from './bench';
import { toScreen } from './camera';
import type { PlanHost } from './gestures/gesture';
import type { Tip } from './gestures/planUi';

/** The pointer rests on a part this long before its words appear. */
const REST_MS = 600;

/** "P05", then a line per laser, the steepest first; the name alone above the part's top. */
export function partLines({ layout }: Analysis, layer: LayerFigures, id: PartId): readonly string[] {
  const index = layout.parts.findIndex((part) => part.id === id);
  const own = layer.pieces.filter(({ part }) => part === index);
  const lines = incidences(layout, own).map(({ laser, angle_deg, spot }) => {
    const words = t('at most {angle}, spot × {spot}', {
      angle: formatDegrees(angle_deg),
      spot: formatNumber(spot, 4),
    });
    return `${layout.machine.lasers[laser].id}: ${words}`;
  });
  if (own.some(({ laser }) => laser < 0))
    lines.push(lines.length > 0 ? t('the rest: exposed by no laser') : t('exposed by no laser'));
  return own.length > 0
    ? [t('{id}, angle of incidence', { id }), ...lines]
    : [t('{id}, no section at this height', { id })];
}

/** The part the pointer has rested on; null while it moves from part to part. */
function useRestedPart(): PartId | null {
  const hovered = useBench(({ view }) =>
    view.tool === 'select' && view.hover?.kind === 'part' ? view.hover.part : null,
  );
  const [rested, setRested] = useState<PartId | null>(null);
  useEffect(() => {
    const timer = setTimeout(() => setRested(hovered), hovered === null ? 0 : REST_MS);
    return () => clearTimeout(timer);
  }, [hovered]);
  return rested !== null && rested === hovered ? rested : null;
}

/** The words beside the pointer; null where it rests on no part of the plan, or a hand is at work. */
export function usePartTip(host: PlanHost, analysis: Analysis, layer: LayerFigures | null): Tip | null {
  const part = useRestedPart();
  const busy = useStore(host.ui, ({ pressed, draft }) => pressed || draft !== null);
  const pointer = useStore(host.ui, (ui) => (part === null ? null : ui.pointer));
  const lines = useMemo(
    () => (part === null || layer === null ? [] : partLines(analysis, layer, part)),
    [analysis, layer, part],
  );
  if (busy || pointer === null || lines.length === 0) return null;
  return { at: toScreen(pointer, host.camera(), host.size()), lines };
}
