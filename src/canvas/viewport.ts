/**
 * How large the plan is on screen, kept beside each workbench because the elevation shares the plan's x axis and so its
 * camera. CSS px.
 */
import { useLayoutEffect, useState, type RefObject } from 'react';
import { useStore } from 'zustand';
import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Camera, Workbench } from '../store/types';
import { useBench, useWorkbench } from './bench';
import { fitCamera, type Size } from './camera';

const sizes = new WeakMap<Workbench, StoreApi<Size>>();

/** The plan's size on screen; 0 × 0 until it has been laid out. */
export const planSizeOf = (bench: Workbench): StoreApi<Size> => {
  const kept = sizes.get(bench) ?? createStore<Size>(() => ({ width: 0, height: 0 }));
  sizes.set(bench, kept);
  return kept;
};

/** The camera in force: the view's own, or the one that fits the platform. */
export const cameraOf = (bench: Workbench): Camera => {
  const { view, layout } = bench.store.getState();
  const { width_mm, depth_mm } = layout.machine.platform;
  return view.camera ?? fitCamera(width_mm, depth_mm, planSizeOf(bench).getState());
};

export function usePlanSize(): Size {
  return useStore(planSizeOf(useWorkbench()));
}

/** The camera in force; re-renders when it changes. */
export function useCamera(): Camera {
  const size = usePlanSize();
  const camera = useBench((state) => state.view.camera);
  const width = useBench((state) => state.layout.machine.platform.width_mm);
  const depth = useBench((state) => state.layout.machine.platform.depth_mm);
  return camera ?? fitCamera(width, depth, size);
}

/** Size of an element's content box, followed as it changes. */
export function useSize(element: RefObject<HTMLElement | null>): Size {
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
