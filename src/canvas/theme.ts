/**
 * Which ground the drawing stands on: the view's own choice, or the system's where the view leaves it open.
 */
import { useSyncExternalStore } from 'react';
import { useBench } from './bench';
import type { Theme } from '../export/plan/palette';

const DARK = '(prefers-color-scheme: dark)';

const onSystemChange = (listener: () => void): (() => void) => {
  const query = window.matchMedia(DARK);
  query.addEventListener('change', listener);
  return () => query.removeEventListener('change', listener);
};
const systemTheme = (): Theme => (window.matchMedia(DARK).matches ? 'dark' : 'light');

/** The theme in force; re-renders when the choice or the system changes. */
export function useTheme(): Theme {
  const chosen = useBench((state) => state.view.theme);
  const system = useSyncExternalStore(onSystemChange, systemTheme);
  return chosen === 'system' ? system : chosen;
}
