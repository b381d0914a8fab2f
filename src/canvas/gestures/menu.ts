/**
 * What a right click, a long press or the menu key asks a menu for: what stands there, which is chosen at once, so that
 * the menu's commands mean it. Platform millimetres, client px.
 */
import type { PlatePoint, ScreenPoint } from '../../units/types';
import { divisionAt } from '../layerAt';
import { targetAt, type Target } from '../plan/hit';
import type { PlanHost } from './gesture';
import type { MenuAsked } from './planUi';

/** Chooses what the menu is about: a part that is selected keeps the selection, another one replaces it. */
const choose = ({ bench }: PlanHost, target: Target): MenuAsked['about'] => {
  const { view } = bench.store.getState();
  switch (target.kind) {
    case 'part':
      if (!view.selection.includes(target.part)) bench.setView({ selection: [target.part] });
      return 'part';
    case 'lines': {
      const { lines } = divisionAt(bench.analysis(), view.height_mm);
      bench.setView({ activeLine: lines.indexOf(target.lines[0]) });
      return 'line';
    }
    case 'zone':
      bench.setView({ activeZone: target.zone });
      return 'line';
    case 'empty':
      return 'plate';
  }
};

/** Opens the menu at a place; one that is open stays. Drawing tools keep their hands to themselves: no menu. */
export const askMenu = (host: PlanHost, at: PlatePoint, client: ScreenPoint): void => {
  const { view } = host.bench.store.getState();
  if (host.ui.getState().menu || (view.tool !== 'select' && view.tool !== 'pan')) return;
  const target = targetAt(host.bench.analysis(), view, at, host.camera().pxPerMm);
  host.ui.setState({ tip: null, menu: { about: choose(host, target), at, client } });
};
