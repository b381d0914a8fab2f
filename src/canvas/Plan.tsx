/**
 * The plan: the platform from above at the present height. Layers from below: ground, zones and rulers;
 * sections at rest, repainted where they changed; what is under the hand, marks over the parts and the hand's own drawing. Each repaints only when
 * what it shows has changed, in the frame of the change; more layers would cost more than they save, for every layer is
 * handed on to the screen with every frame.
 */
import { t } from '../language/index';
import { Suspense, useCallback, useMemo, useRef, useState, type ComponentType } from 'react';
import { Stage } from 'react-konva/lib/ReactKonvaCore';
import { useStore } from 'zustand';
import type { Analysis } from '../build/types';
import type { Hover } from '../store/types';
import { useAnalysis, useBench } from './bench';
import type { Size } from './camera';
import './canvas.css';
import { drawGround } from './draw/ground';
import { drawHand } from './draw/hand';
import { drawOverlay } from './draw/overlay';
import type { Ctx, Sheet } from './draw/pen';
import { besideRulers, drawRulers } from './draw/rulers';
import { itemsPainter } from './draw/repaint';
import { drawItems } from './draw/sections';
import type { MenuAsked, PlanUiStore } from './gestures/planUi';
import { later } from './later';
import { divisionAt, layerFiguresAt } from './layerAt';
import { usePaintFault } from './paintFault';
import { PaintLayer } from './PaintLayer';
import { GROUNDS, type Theme } from '../export/plan/palette';
import { keepSame, planItems, veiled, type PartItem } from './plan/items';
import { useTheme } from './theme';
import { usePlanPointer } from './usePlanPointer';
import { useCamera, useCameraOfEverything, useFittedCamera, usePixelRatio, useSize } from './viewport';

const OverPlan = later(() => import('./OverPlan').then((m) => m.OverPlan));

/** Hands back the list it gave last time as long as nothing in it has changed. */
const keeper = () => {
  let last: readonly PartItem[] = [];
  return (next: readonly PartItem[]) => (last = keepSame(last, next));
};

/** Only a laser's hover shows on the ground (its reach). */
const groundHover = (hover: Hover | null): Hover | null => (hover?.kind === 'laser' ? hover : null);

function usePlanItems(moving: readonly string[]) {
  const analysis = useAnalysis();
  const height = useBench((state) => state.view.height_mm);
  const [keep] = useState(() => ({ all: keeper(), still: keeper(), moving: keeper() }));
  const layer = layerFiguresAt(analysis, height);
  const hidden = useBench((state) => state.view.hidden);
  const items = useMemo(
    () => keep.all(veiled(planItems(analysis, layer), hidden)),
    [keep, analysis, layer, hidden],
  );
  const still = useMemo(
    () => keep.still(items.filter((item) => !moving.includes(item.part.id))),
    [keep, items, moving],
  );
  const loose = useMemo(
    () => keep.moving(items.filter((item) => moving.includes(item.part.id))),
    [keep, items, moving],
  );
  return { analysis, layer, items, still, loose };
}

type Shown = ReturnType<typeof usePlanItems>;

/** Paper, zones, rulers: repainted as the view, the machine or the division changes. */
function useGroundPaint(sheet: Sheet, theme: Theme, analysis: Analysis) {
  const { machine } = analysis.layout;
  const height_mm = useBench((state) => state.view.height_mm);
  const division = divisionAt(analysis, height_mm);
  const hover = useBench((state) => groundHover(state.view.hover));
  return useCallback(
    (ctx: Ctx) => {
      drawGround(ctx, sheet, theme, { machine, division, hover });
      drawRulers(ctx, sheet, machine.platform);
    },
    [sheet, theme, machine, division, hover],
  );
}

/** What is under the hand, marks over the parts, and the hand's own drawing. */
function useLivePaint(sheet: Sheet, theme: Theme, { analysis, layer, items, loose }: Shown, ui: PlanUiStore) {
  const height_mm = useBench((state) => state.view.height_mm);
  const division = divisionAt(analysis, height_mm);
  const selection = useBench((state) => state.view.selection);
  const locked = useBench((state) => state.view.locked);
  const hover = useBench((state) => state.view.hover);
  const draft = useStore(ui, (state) => state.draft);
  const cross = useStore(ui, (state) => state.cross);
  return useCallback(
    (ctx: Ctx) =>
      besideRulers(ctx, sheet, () => {
        drawItems(ctx, sheet, theme, loose);
        drawOverlay(ctx, sheet, {
          theme,
          analysis,
          division,
          layer,
          items,
          view: { selection, locked, hover },
        });
        drawHand(ctx, sheet, { draft, cross });
      }),
    [sheet, theme, loose, analysis, division, layer, items, selection, locked, hover, draft, cross],
  );
}

function Paints({ size, shown, ui }: { size: Size; shown: Shown; ui: PlanUiStore }) {
  const camera = useCamera();
  const theme = useTheme();
  const { still } = shown;
  const sheet = useMemo((): Sheet => ({ camera, size, ground: GROUNDS[theme] }), [camera, size, theme]);
  const [paintItems] = useState(itemsPainter);
  const paintStill = useCallback(
    (ctx: Ctx) => paintItems(ctx, sheet, theme, still),
    [paintItems, sheet, theme, still],
  );
  const paintGround = useGroundPaint(sheet, theme, shown.analysis);
  const paintLive = useLivePaint(sheet, theme, shown, ui);
  const onFault = usePaintFault();
  const ratio = usePixelRatio();
  return (
    <Stage width={size.width} height={size.height} listening={false}>
      <PaintLayer paint={paintGround} ratio={ratio} onFault={onFault} />
      <PaintLayer paint={paintStill} ratio={ratio} onFault={onFault} keeps />
      <PaintLayer paint={paintLive} ratio={ratio} onFault={onFault} />
    </Stage>
  );
}

/** The menu that stands over the plan; it belongs to the panels, where the commands are. */
export interface PlanMenuProps {
  readonly asked: MenuAsked;
  onClose(): void;
  /** The menu has gone: the keyboard is free. */
  onGone(): void;
}

export function Plan({ Menu = null }: { readonly Menu?: ComponentType<PlanMenuProps> | null }) {
  const element = useRef<HTMLDivElement>(null);
  const size = useSize(element);
  useFittedCamera(size);
  useCameraOfEverything(size);
  const { host, controller, pressHandle, handlers } = usePlanPointer(element, size);
  const cursor = useStore(host.ui, (ui) => (ui.panKey ? 'grab' : ui.cursor));
  const shown = usePlanItems(useStore(host.ui, (ui) => ui.moving));
  const { analysis, layer } = shown;
  const asked = useStore(host.ui, (ui) => ui.menu);
  const takeKeys = () => {
    if (document.activeElement === document.body) element.current?.focus({ preventScroll: true });
  };
  const plan = (
    <div
      ref={element}
      className="plan-canvas"
      data-testid="plan"
      role="application"
      aria-label={t('Plan of the platform, front edge below')}
      // An application takes the keys itself: the drawing tools' cross moves with the arrows.
      // oxlint-disable-next-line jsx-a11y/no-noninteractive-tabindex
      tabIndex={0}
      style={{ cursor }}
      {...handlers}
    >
      {size.width > 0 && size.height > 0 && (
        <>
          <Paints size={size} shown={shown} ui={host.ui} />
          <Suspense fallback={null}>
            <OverPlan
              element={element}
              host={host}
              controller={controller}
              size={size}
              onPress={pressHandle}
              analysis={analysis}
              layer={layer}
            />
          </Suspense>
        </>
      )}
    </div>
  );
  // The menu is no child of the plan: what is pressed there is not pressed here.
  return (
    <>
      {plan}
      {asked && Menu && (
        <Suspense fallback={null}>
          <Menu asked={asked} onClose={() => host.ui.setState({ menu: null })} onGone={takeKeys} />
        </Suspense>
      )}
    </>
  );
}
