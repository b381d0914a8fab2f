/**
 * How to give a zone to lasers that are on and have none; loaded when there is one.
 */
import { useBench } from '../../canvas/bench';
import { plateShown } from '../../store/shown';
import type { Division } from '../../zoning/types';
import { withoutZone } from './withoutZone';

export function LackHints({ division }: { readonly division: Division }) {
  const zoning = useBench((state) => plateShown(state).zoning);
  return withoutZone(division, zoning).map((words) => (
    <p key={words} className="lack-hint" data-testid="without-zone">
      {words}
    </p>
  ));
}
