/**
 * Which laser, or which lasers, each zone is given to.
 */
import { t, type Text } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { setZoneLasers } from '../../commands/operations';
import type { LaserId, Zoning } from '../../layout/types';
import { Choice } from '../controls/Choice';
import { useEdit, useOnShown } from '../useEdit';
import { DrawnZones } from './DrawnZones';

const QUADRANT_NAMES: readonly Text[] = ['front left', 'front right', 'rear left', 'rear right'];

function SingleLasers({ lasers, named }: { readonly lasers: readonly LaserId[]; readonly named: boolean }) {
  const edit = useEdit();
  const onShown = useOnShown();
  const known = useBench((state) => state.layout.machine.lasers);
  return lasers.map((laser, index) => (
    <Choice
      key={`${index} of ${lasers.length}`}
      label={
        named
          ? t(QUADRANT_NAMES[index] ?? 'zone {number}', { number: index + 1 })
          : t('strip {number}', { number: index + 1 })
      }
      value={laser}
      testId={`zone-laser-${index}`}
      options={known.map(({ id, on }) => ({ value: id, label: on ? id : t('{laser} (off)', { laser: id }) }))}
      onChoose={(id) =>
        edit.press(
          t('lasers of a zone'),
          onShown((plate) => setZoneLasers(plate, index, [id])),
        )
      }
    />
  ));
}

export function ZoneLaserFields({ zoning }: { readonly zoning: Zoning }) {
  if (zoning.strategy === 'wholeField')
    return <p className="hint">{t('Every laser may expose everything it reaches.')}</p>;
  if (zoning.strategy !== 'drawn')
    return <SingleLasers lasers={zoning.lasers} named={zoning.strategy === 'quadrants'} />;
  return <DrawnZones zones={zoning.zones} />;
}
