/**
 * The machine's lasers: on or off, power, foot, working height, reach. A laser that is off leaves its own region
 * unassigned; neighbours never grow by themselves.
 */
import { t } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { addLaser, removeLaser, setLaser, switchLaser } from '../../commands/operations';
import type { LaserFields as Fields } from '../../commands/operations';
import type { Laser, LayoutRing, Platform } from '../../layout/types';
import { Block } from '../controls/Block';
import { Choice } from '../controls/Choice';
import { LengthField, NumberField } from '../controls/fields';
import { Swatch } from '../controls/Swatch';
import { useEdit } from '../useEdit';
import { RingFields } from './RingFields';
import { discRing, formOf, rectangleRing } from './ringForm';

type ReachKind = 'all' | 'disc' | 'rectangle' | 'outline';

/** A first reach of each kind: around the laser's foot, as wide as the platform. */
function firstReach(kind: ReachKind, laser: Laser, platform: Platform): LayoutRing | null {
  const [x, y] = laser.foot_mm;
  const [w, d] = [platform.width_mm / 2, platform.depth_mm / 2];
  if (kind === 'disc') return discRing(x, y, Math.max(w, d));
  return kind === 'rectangle' ? rectangleRing(-w, -d, w, d) : null;
}

function ReachFields({ laser, platform }: { readonly laser: Laser; readonly platform: Platform }) {
  const edit = useEdit();
  const kind: ReachKind = laser.reach === null ? 'all' : formOf(laser.reach).kind;
  const options: { value: ReachKind; label: string }[] = [
    { value: 'all', label: t('whole platform') },
    { value: 'disc', label: t('disc') },
    { value: 'rectangle', label: t('rectangle') },
  ];
  if (kind === 'outline') options.push({ value: 'outline', label: t('outline') });
  return (
    <>
      <Choice
        label={t('reach')}
        value={kind}
        options={options}
        testId={`reach-${laser.id}`}
        onChoose={(next) => {
          const reach = firstReach(next, laser, platform);
          edit.press(t('reach of {id}', { id: laser.id }), (layout) => setLaser(layout, laser.id, { reach }));
        }}
      />
      {laser.reach !== null && (
        <RingFields
          name={t('reach')}
          ring={laser.reach}
          recipe={(layout, reach) => setLaser(layout, laser.id, { reach })}
        />
      )}
    </>
  );
}

function LaserNumbers({ laser }: { readonly laser: Laser }) {
  const [x, y] = laser.foot_mm;
  const field =
    (fields: (value: number) => Fields) => (layout: Parameters<typeof setLaser>[0], value: number) =>
      setLaser(layout, laser.id, fields(value));
  return (
    <>
      <NumberField
        label={t('power')}
        unit="W"
        step={10}
        value={laser.power_W}
        recipe={field((power_W) => ({ power_W }))}
      />
      <LengthField label={t('foot x')} value={x} recipe={field((value) => ({ foot_mm: [value, y] }))} />
      <LengthField label={t('foot y')} value={y} recipe={field((value) => ({ foot_mm: [x, value] }))} />
      <LengthField
        label={t('working height')}
        value={laser.workingHeight_mm}
        step={10}
        recipe={field((workingHeight_mm) => ({ workingHeight_mm }))}
      />
    </>
  );
}

function LaserEntry({ laser, index, only }: LaserEntryProps) {
  const edit = useEdit();
  const platform = useBench((state) => state.layout.machine.platform);
  return (
    <li className="laser-entry">
      <div className="row">
        <Swatch laser={index} />
        <b>{laser.id}</b>
        <label className="switch">
          <input
            type="checkbox"
            checked={laser.on}
            data-testid={`laser-on-${laser.id}`}
            onChange={(event) => {
              const on = event.target.checked;
              edit.press(t(on ? '{laser} on' : '{laser} off', { laser: laser.id }), (layout) =>
                switchLaser(layout, laser.id, on),
              );
            }}
          />
          {t('on')}
        </label>
        {!only && (
          <button
            type="button"
            className="button"
            data-bare
            aria-label={t('Remove the laser {id}', { id: laser.id })}
            onClick={() =>
              edit.press(t('remove {id}', { id: laser.id }), (layout) => removeLaser(layout, laser.id))
            }
          >
            {t('Remove')}
          </button>
        )}
      </div>
      <details className="inner">
        <summary>{t('Power, foot, reach')}</summary>
        <LaserNumbers laser={laser} />
        <ReachFields laser={laser} platform={platform} />
      </details>
    </li>
  );
}
interface LaserEntryProps {
  readonly laser: Laser;
  readonly index: number;
  readonly only: boolean;
}

export function LasersBlock() {
  const edit = useEdit();
  const lasers = useBench((state) => state.layout.machine.lasers);
  return (
    <Block
      title={t('LASERS')}
      note={t('{on} of {count} on', { on: lasers.filter(({ on }) => on).length, count: lasers.length })}
    >
      <ul>
        {lasers.map((laser, index) => (
          <LaserEntry key={laser.id} laser={laser} index={index} only={lasers.length === 1} />
        ))}
      </ul>
      <button type="button" className="button" onClick={() => edit.press(t('add a laser'), addLaser)}>
        {t('Add a laser')}
      </button>
    </Block>
  );
}
