/**
 * Drawn zones: which lasers each is given to, and, for the one that is chosen, its outline as numbers. Choosing a zone
 * here puts its handles on the plan.
 */
import { t } from '../../language/index';
import { useBench, useWorkbench } from '../../canvas/bench';
import {
  addZoneCorner,
  cornersTogether,
  moveZoneCorners,
  removeDrawnZone,
  removeZoneCorner,
  setDrawnZone,
  setZoneLasers,
  type ZoneCorner,
} from '../../commands/operations';
import type { DrawnZone, LaserId, LayoutRing, Outline, Point } from '../../layout/types';
import { LengthField } from '../controls/fields';
import { Swatch } from '../controls/Swatch';
import { RingFields } from '../machine/RingFields';
import { useEdit, useOnShown } from '../useEdit';

/** Outlines with more corners than this are shaped on the plan or in a file. */
const MOST_CORNERS = 24;

interface ZoneProps {
  readonly zone: DrawnZone;
  readonly index: number;
}

interface SmallButtonProps {
  readonly sign: string;
  readonly label: string;
  readonly disabled?: boolean;
  onPress(): void;
}

/** A button of one sign; what it does is said in its title and read out. */
const SmallButton = ({ sign, label, disabled, onPress }: SmallButtonProps) => (
  <button
    type="button"
    className="button"
    data-bare
    title={label}
    aria-label={label}
    disabled={disabled}
    onClick={onPress}
  >
    {sign}
  </button>
);

function CornerFields({ outline, place }: { readonly outline: Outline; readonly place: ZoneCorner }) {
  const edit = useEdit();
  const onShown = useOnShown();
  const [x, y] = outline[place.corner]!;
  const name = t('corner {number}', { number: place.corner + 1 });
  const next = outline[(place.corner + 1) % outline.length]!;
  const field = (axis: 'x' | 'y', value: number, to: (value: number) => Point) => (
    <LengthField
      label={axis}
      what={`${name} ${axis}`}
      value={value}
      testId={`zone-${place.ring}-${place.corner}-${axis}`}
      recipe={onShown((plate, typed: number) =>
        moveZoneCorners(plate, cornersTogether(plate, place), to(typed)),
      )}
    />
  );
  const middle: Point = [(x + next[0]) / 2, (y + next[1]) / 2];
  const add = (): void =>
    edit.press(
      t('add a corner'),
      onShown((plate) => addZoneCorner(plate, place, middle)),
    );
  const remove = (): void =>
    edit.press(
      t('remove a corner'),
      onShown((plate) => removeZoneCorner(plate, place)),
    );
  return (
    <fieldset className="corner">
      <legend>{name}</legend>
      {field('x', x, (value) => [value, y])}
      {field('y', y, (value) => [x, value])}
      <SmallButton sign="+" label={t('A new corner after {name}', { name })} onPress={add} />
      <SmallButton
        sign="×"
        label={t('Remove {name}', { name })}
        disabled={outline.length <= 3}
        onPress={remove}
      />
    </fieldset>
  );
}

function OutlineFields({ ring, zone, place }: OutlineProps) {
  const onShown = useOnShown();
  if ('circle_mm' in ring)
    return (
      <RingFields
        name={t('zone')}
        ring={ring}
        recipe={onShown((plate, next: LayoutRing) =>
          setDrawnZone(plate, place.zone, zone.rings.with(place.ring, next)),
        )}
      />
    );
  if (ring.length > MOST_CORNERS)
    return (
      <p className="hint">
        {t('An outline of {count} points; the handles on the plan move it.', { count: ring.length })}
      </p>
    );
  return ring.map((_, corner) => (
    <CornerFields key={`${corner} of ${ring.length}`} outline={ring} place={{ ...place, corner }} />
  ));
}
interface OutlineProps {
  readonly ring: LayoutRing;
  readonly zone: DrawnZone;
  readonly place: Omit<ZoneCorner, 'corner'>;
}

function ZoneLasers({ zone, index }: ZoneProps) {
  const edit = useEdit();
  const onShown = useOnShown();
  const lasers = useBench((state) => state.layout.machine.lasers);
  const toggle = (id: LaserId): void => {
    const next = zone.lasers.includes(id)
      ? zone.lasers.filter((other) => other !== id)
      : [...zone.lasers, id];
    edit.press(
      t('lasers of a zone'),
      onShown((plate) => setZoneLasers(plate, index, next)),
    );
  };
  return (
    <fieldset className="row" aria-label={t('Lasers of zone {number}', { number: index + 1 })}>
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
  );
}

function DrawnZoneRow({ zone, index }: ZoneProps) {
  const bench = useWorkbench();
  const edit = useEdit();
  const onShown = useOnShown();
  const chosen = useBench((state) => state.view.activeZone === index);
  const remove = (): void =>
    edit.press(
      t('remove a zone'),
      onShown((plate) => removeDrawnZone(plate, index)),
    );
  return (
    <li className="drawn-zone" data-chosen={chosen || undefined}>
      <button
        type="button"
        className="button drawn-zone-name"
        aria-pressed={chosen}
        data-testid={`choose-zone-${index}`}
        onClick={() => bench.setView({ activeZone: chosen ? null : index, tool: 'select' })}
      >
        {t(chosen ? 'zone {number}: done' : 'zone {number}: reshape', { number: index + 1 })}
      </button>
      <ZoneLasers zone={zone} index={index} />
      <SmallButton sign="×" label={t('Remove zone {number}', { number: index + 1 })} onPress={remove} />
      {chosen && (
        <div className="drawn-zone-outline">
          {zone.rings.map((ring, i) => (
            <OutlineFields
              key={`${i} of ${zone.rings.length}`}
              ring={ring}
              zone={zone}
              place={{ zone: index, ring: i }}
            />
          ))}
        </div>
      )}
    </li>
  );
}

export function DrawnZones({ zones }: { readonly zones: readonly DrawnZone[] }) {
  return (
    <>
      <ol className="drawn-zones">
        {zones.map((zone, index) => (
          <DrawnZoneRow key={`${index} of ${zones.length}`} zone={zone} index={index} />
        ))}
      </ol>
      <p className="hint">
        {t(
          'Draw more zones in the plan with the zone tool. Where zones overlap, their lasers share. A corner that neighbours have in common moves for all of them.',
        )}
      </p>
    </>
  );
}
