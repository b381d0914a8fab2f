/**
 * Words beside the pointer, about the part it rests on, figures of a clicked seam, and one line that says what the present tool does. Screen px.
 */
import { t, type Text } from '../language/index';
import { useStore } from 'zustand';
import type { Analysis, LayerFigures } from '../build/types';
import type { Tool } from '../store/types';
import { formatMm } from '../units/format';
import type { Px } from '../units/types';
import { useBench } from './bench';
import { RULER_BOTTOM_PX, RULER_LEFT_PX, toScreen, type Size } from './camera';
import type { PlanHost } from './gestures/gesture';
import type { PlanUi, Tip } from './gestures/planUi';
import { usePartTip } from './partTip';
import { seamAt } from './plan/hit';

const ASIDE_PX: Px = 14;
/** Room a tip may need; nearer to an edge it stands on the other side of the pointer. */
const ROOM = { width: 190, height: 60 };

const HINTS: Readonly<Record<Tool, Text>> = {
  select:
    'Box to the right: what is inside, to the left: what it touches; Alt-drag: a copy; Ctrl: no snapping',
  pan: 'Drag the plate',
  rectangle: 'Corner to corner, Alt: free',
  disc: 'From the centre outward',
  ring: 'Outer circle, then the inner one',
  polygon: 'A click per corner or a drag per side, Enter ends',
  zone: 'A click per corner or a drag per side, Enter ends',
  measure: 'Drag, or click twice; corners, centres and outlines catch; Shift: 45°, Ctrl: free',
};

const ZONE_HINT: Text = 'Drag a corner, Ctrl: alone; a cross adds one, Shift and a click take one away';

/** Figures of the seam that was clicked, as long as it is there. */
const seamTip = (
  asked: PlanUi['seam'],
  analysis: Analysis,
  layer: LayerFigures | null,
  host: PlanHost,
): Tip | null => {
  if (!asked || !layer) return null;
  const camera = host.camera();
  const seam = layer.seams[seamAt(layer, asked.at, camera.pxPerMm)];
  if (!seam || analysis.layout.parts[seam.part]?.id !== asked.part) return null;
  const [a, b] = seam.lasers.map((laser) => analysis.layout.machine.lasers[laser]?.id ?? '?');
  return {
    at: toScreen(asked.at, camera, host.size()),
    lines: [
      t('Seam in {part}, {a} and {b}', { part: asked.part, a, b }),
      t('{length}, {count} witness [line|lines]', {
        length: formatMm(seam.length_mm),
        count: seam.witnessLines,
      }),
    ],
  };
};

/** What the present tool does, in a few words. */
export function PlanHint() {
  const tool = useBench((state) => state.view.tool);
  const zoneChosen = useBench((state) => state.view.activeZone !== null && state.view.tool === 'select');
  return <p className="plan-hint">{t(zoneChosen ? ZONE_HINT : HINTS[tool])}</p>;
}

/** Where the pointer stands, marked on both rulers. */
export function PointerMarks({ host, size }: { host: PlanHost; size: Size }) {
  const pointer = useStore(host.ui, (ui) => ui.pointer);
  if (!pointer) return null;
  const { left, top } = toScreen(pointer, host.camera(), size);
  return (
    <>
      {left > RULER_LEFT_PX && (
        <i className="mark-x" style={{ transform: `translateX(${Math.round(left)}px)` }} />
      )}
      {top < size.height - RULER_BOTTOM_PX && (
        <i className="mark-y" style={{ transform: `translateY(${Math.round(top)}px)` }} />
      )}
    </>
  );
}

export interface PlanTipProps {
  readonly host: PlanHost;
  readonly size: Size;
  readonly analysis: Analysis;
  readonly layer: LayerFigures | null;
}

export function PlanTip({ host, size, analysis, layer }: PlanTipProps) {
  const shown = useStore(host.ui, (ui) => ui.tip);
  const seam = useStore(host.ui, (ui) => ui.seam);
  const ofPart = usePartTip(host, analysis, layer);
  const tip = shown ?? seamTip(seam, analysis, layer, host) ?? ofPart;
  const flipX = tip !== null && tip.at.left > size.width - ROOM.width;
  const flipY = tip !== null && tip.at.top > size.height - ROOM.height;
  return (
    <>
      {tip && (
        <div
          className="plan-tip"
          data-testid="plan-tip"
          style={{
            left: tip.at.left + (flipX ? -ASIDE_PX : ASIDE_PX),
            top: tip.at.top + (flipY ? -ASIDE_PX : ASIDE_PX),
            transform: `translate(${flipX ? '-100%' : '0'}, ${flipY ? '-100%' : '0'})`,
          }}
        >
          {tip.lines.map((words) => (
            <div key={words}>{words}</div>
          ))}
        </div>
      )}
    </>
  );
}
