/**
 * Which laser, or which lasers, each zone is given to.
 */
import { useBench } from '../../canvas/bench';
import { removeDrawnZone, setZoneLasers } from '../../commands/operations';
import type { DrawnZone, LaserId, Zoning } from '../../layout/types';
import { Choice } from '../controls/Choice';
import { Swatch } from '../controls/Swatch';
import { useEdit } from '../useEdit';

const QUADRANT_NAMES = ['front left', 'front right', 'rear left', 'rear right'] as const;

function SingleLasers({ lasers, named }: { readonly lasers: readonly LaserId[]; readonly named: boolean }) {
  const edit = useEdit();
  const known = useBench((state) => state.layout.machine.lasers);
  return lasers.map((laser, index) => (
    <Choice
      key={`${index} of ${lasers.length}`}
      label={named ? (QUADRANT_NAMES[index] ?? `zone ${index + 1}`) : `strip ${index + 1}`}
      value={laser}
      testId={`zone-laser-${index}`}
      options={known.map(({ id, on }) => ({ value: id, label: on ? id : `${id} (off)` }))}
      onChoose={(id) => edit.press('lasers of a zone', (layout) => setZoneLasers(layout, index, [id]))}
    />
  ));
}

function DrawnZoneRow({ zone, index }: { readonly zone: DrawnZone; readonly index: number }) {
  const edit = useEdit();
  const lasers = useBench((state) => state.layout.machine.lasers);
  const toggle = (id: LaserId): void => {
    const next = zone.lasers.includes(id)
      ? zone.lasers.filter((other) => other !== id)
      : [...zone.lasers, id];
    edit.press('lasers of a zone', (layout) => setZoneLasers(layout, index, next));
  };
  return (
    <li className="drawn-zone">
      <span className="drawn-zone-name">zone {index + 1}</span>
      <fieldset className="row" aria-label={`Lasers of zone ${index + 1}`}>
        {lasers.map(({ id }, laser) => (
          <button
            key={id}
            type="button"
            className="choice"
            aria-pressed={zone.lasers.includes(id)}
            onClick={() => toggle(id)}
          >
            <Swatch laser={laser} size={12} />
            {id}
          </button>
        ))}
      </fieldset>
      <button
        type="button"
        className="button"
        data-bare
        aria-label={`Remove zone ${index + 1}`}
        onClick={() => edit.press('remove a zone', (layout) => removeDrawnZone(layout, index))}
      >
        ×
      </button>
    </li>
  );
}

export function ZoneLaserFields({ zoning }: { readonly zoning: Zoning }) {
  if (zoning.strategy === 'wholeField')
    return <p className="hint">Every laser may expose everything it reaches.</p>;
  if (zoning.strategy !== 'drawn')
    return <SingleLasers lasers={zoning.lasers} named={zoning.strategy === 'quadrants'} />;
  return (
    <>
      <ol className="drawn-zones">
        {zoning.zones.map((zone, index) => (
          <DrawnZoneRow key={`${index} of ${zoning.zones.length}`} zone={zone} index={index} />
        ))}
      </ol>
      <p className="hint">
        Draw more zones in the plan with the zone tool. Where zones overlap, their lasers share.
      </p>
    </>
  );
}
