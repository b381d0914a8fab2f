/**
 * The camera in force, and sizes of elements on screen. The plan tells the view what camera would fit the platform;
 * the elevation shares the plan's x axis and so its camera. CSS px.
 */
import { useLayoutEffect, useState, type RefObject } from 'react';
import type { Camera, Workbench } from '../store/types';
import { useBench, useWorkbench } from './bench';
import { fitCamera, type Size } from './camera';

/** Before the plan has been laid out. */
const UNMEASURED: Camera = { centreX_mm: 0, centreY_mm: 0, pxPerMm: 1 };

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
    if (size.width > 0 && size.height > 0) bench.setView({ fitted: fitCamera(width, depth, size) });
  }, [bench, width, depth, size]);
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
