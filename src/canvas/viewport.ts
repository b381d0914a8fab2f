/**
 * The camera in force, and sizes of elements on screen. The plan tells the view what camera would fit the platform;
 * the elevation shares the plan's x axis and so its camera. CSS px.
 */
import { useEffect, useLayoutEffect, useState, useSyncExternalStore, type RefObject } from 'react';
import type { Analysis } from '../build/types';
import { boxUnion } from '../geometry/region';
import type { Box } from '../geometry/types';
import type { Camera, Workbench } from '../store/types';
import { useAnalysisLater, useBench, useWorkbench } from './bench';
import { fitBox, fitCamera, platformBox, type Size } from './camera';
import { footprintBox } from './plan/items';

/** Before the plan has been laid out. */
const UNMEASURED: Camera = { centreX_mm: 0, centreY_mm: 0, pxPerMm: 1 };

const sameCamera = (a: Camera | null, b: Camera | null): boolean =>
  a === b ||
  (a !== null &&
    b !== null &&
    a.pxPerMm === b.pxPerMm &&
    a.centreX_mm === b.centreX_mm &&
    a.centreY_mm === b.centreY_mm);

/** The camera in force: the view's own, or the one that fits the platform. */
export const cameraOf = (bench: Workbench): Camera => {
  const { view } = bench.store.getState();
  return view.camera ?? view.fitted ?? UNMEASURED;
};

/** The camera in force; re-renders when it changes. */
export function useCamera(): Camera {
  return useBench(({ view }) => view.camera ?? view.fitted ?? UNMEASURED);
}

/** Keeps the view's fitting camera right as the plan or the platform changes size. */
export function useFittedCamera(size: Size): void {
  const bench = useWorkbench();
  const width = useBench((state) => state.layout.machine.platform.width_mm);
  const depth = useBench((state) => state.layout.machine.platform.depth_mm);
  useLayoutEffect(() => {
    if (size.width > 0 && size.height > 0)
      bench.setView({ fitted: fitCamera(width, depth, size), planSize: size });
  }, [bench, width, depth, size]);
}

export const platformOf = ({ layout }: Analysis): Box => {
  const { width_mm, depth_mm } = layout.machine.platform;
  return platformBox(width_mm, depth_mm);
};

/** The camera that shows the platform and every part; null where the platform holds them all. */
const cameraOfEverything = (analysis: Analysis, size: Size): Camera | null => {
  const platform = platformOf(analysis);
  const all = analysis.parts.map(footprintBox).reduce(boxUnion, platform);
  const off = (Object.keys(platform) as (keyof Box)[]).some((side) => all[side] !== platform[side]);
  return off ? fitBox(all, size) : null;
};

/** Keeps the camera that shows parts off the platform too, a moment after they moved. */
export function useCameraOfEverything(size: Size): void {
  const bench = useWorkbench();
  const analysis = useAnalysisLater();
  useEffect(() => {
    if (size.width === 0 || size.height === 0) return;
    const everything = cameraOfEverything(analysis, size);
    if (!sameCamera(everything, bench.store.getState().view.everything)) bench.setView({ everything });
  }, [bench, analysis, size]);
}

/** Size of an element's content box, followed as it changes; 0 × 0 until it has been laid out. */
export function useSize(element: RefObject<Element | null>): Size {
  const [size, setSize] = useState<Size>({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const node = element.current;
    if (!node) return undefined;
    const measure = () => setSize({ width: node.clientWidth, height: node.clientHeight });
    measure();
    const observer = new ResizeObserver(measure);
    observer.observe(node);
    return () => observer.disconnect();
  }, [element]);
  return size;
}

const ratioOf = (): number => window.devicePixelRatio || 1;

/** The query names the ratio that holds now, so each change needs the next one; a new size may bring a new ratio too. */
function onRatioChange(listener: () => void): () => void {
  let query: MediaQueryList | null = null;
  const heard = () => {
    listen();
    listener();
  };
  const listen = () => {
    query?.removeEventListener('change', heard);
    query = window.matchMedia(`(resolution: ${ratioOf()}dppx)`);
    query.addEventListener('change', heard);
  };
  listen();
  window.addEventListener('resize', heard);
  return () => {
    query?.removeEventListener('change', heard);
    window.removeEventListener('resize', heard);
  };
}

/** Device pixels per CSS px; follows the window from screen to screen, and the browser's own zoom. */
export const usePixelRatio = (): number => useSyncExternalStore(onRatioChange, ratioOf);
