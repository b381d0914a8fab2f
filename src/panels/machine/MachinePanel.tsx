/**
 * The machine as numbers: platform, margin and keep-outs, directions of gas flow and blade, lasers, powder stores.
 */
import { t, type Text } from '../../language/index';
import { useBench } from '../../canvas/bench';
import {
  addKeepOut,
  removeKeepOut,
  setGasFlow,
  setMachine,
  setPlatform,
  setRecoater,
} from '../../commands/operations';
import { reviewed } from '../../commands/operations/review';
import { DEFAULT_POWDER } from '../../layout/defaults';
import type { Result } from '../../layout/result';
import type { Layout, LayoutRing, Machine, PowderStore } from '../../layout/types';
import { Block } from '../controls/Block';
import { AngleField, LengthField, NumberField } from '../controls/fields';
import { SegmentedField } from '../controls/Segmented';
import { TextField } from '../controls/TextField';
import { useEdit } from '../useEdit';
import { LasersBlock } from './LaserFields';
import { RingFields } from './RingFields';
import { discRing, rectangleRing } from './ringForm';

function PlatformBlock({ machine }: { readonly machine: Machine }) {
  const { width_mm, depth_mm, margin_mm } = machine.platform;
  return (
    <Block title={t('PLATFORM')}>
      <TextField
        label={t('machine')}
        value={machine.name}
        recipe={(layout, name) => setMachine(layout, { name })}
      />
      <LengthField
        label={t('width, x')}
        value={width_mm}
        step={10}
        testId="platform-width"
        recipe={(layout, value) => setPlatform(layout, { width_mm: value })}
      />
      <LengthField
        label={t('depth, y')}
        value={depth_mm}
        step={10}
        testId="platform-depth"
        recipe={(layout, value) => setPlatform(layout, { depth_mm: value })}
      />
      <LengthField
        label={t('margin')}
        value={margin_mm}
        testId="platform-margin"
        recipe={(layout, value) => setPlatform(layout, { margin_mm: value })}
      />
      <LengthField
        label={t('build height')}
        value={machine.buildHeight_mm}
        step={10}
        recipe={(layout, value) => setMachine(layout, { buildHeight_mm: value })}
      />
    </Block>
  );
}

function RecoatingFields({ recoater }: Pick<Machine, 'recoater'>) {
  const edit = useEdit();
  return (
    <>
      <SegmentedField
        label={t('recoats')}
        value={recoater.mode}
        options={[
          { value: 'oneWay', label: t('Recoats one way'), content: t('one way') },
          { value: 'bothWays', label: t('Recoats both ways'), content: t('both') },
        ]}
        onChoose={(mode) => edit.press('recoating', (layout) => setMachine(layout, { recoater: { mode } }))}
      />
      <NumberField
        label={t('one way takes')}
        unit="s"
        step={0.5}
        value={recoater.oneWay_s}
        recipe={(layout, oneWay_s) => setMachine(layout, { recoater: { oneWay_s } })}
      />
      <NumberField
        label={t('both ways takes')}
        unit="s"
        step={0.5}
        value={recoater.bothWays_s}
        recipe={(layout, bothWays_s) => setMachine(layout, { recoater: { bothWays_s } })}
      />
    </>
  );
}

function DirectionsBlock({ machine }: { readonly machine: Machine }) {
  const { recoater, gasFlow } = machine;
  return (
    <Block title={t('GAS FLOW AND BLADE')}>
      <AngleField
        label={t('gas flows towards')}
        value={gasFlow.towards_deg}
        step={15}
        testId="gas-flow"
        hint={t('Counter-clockwise from +x; 270° is towards the front.')}
        recipe={setGasFlow}
      />
      <AngleField
        label={t('blade moves towards')}
        value={recoater.towards_deg}
        step={15}
        testId="blade"
        recipe={setRecoater}
      />
      <RecoatingFields recoater={recoater} />
    </Block>
  );
}

/** The layout with one keep-out replaced, or why it is refused. */
function setKeepOut(layout: Layout, index: number, ring: LayoutRing): Result<Layout> {
  const { platform } = layout.machine;
  const keepOuts = platform.keepOuts.with(index, ring);
  return reviewed(layout, { ...layout, machine: { ...layout.machine, platform: { ...platform, keepOuts } } });
}

function KeepOutsBlock({ machine }: { readonly machine: Machine }) {
  const edit = useEdit();
  const { keepOuts } = machine.platform;
  const add = (ring: LayoutRing) => (): void =>
    edit.press(t('add a keep-out'), (layout) => addKeepOut(layout, ring));
  return (
    <Block title={t('KEEP-OUTS')} note={String(keepOuts.length)} open={keepOuts.length > 0}>
      {keepOuts.map((ring, index) => (
        <div className="laser-entry" key={`${index} of ${keepOuts.length}`}>
          <RingFields
            name={t('keep-out')}
            ring={ring}
            recipe={(layout, next) => setKeepOut(layout, index, next)}
          />
          <button
            type="button"
            className="button"
            onClick={() => edit.press(t('remove a keep-out'), (layout) => removeKeepOut(layout, index))}
          >
            {t('Remove')}
          </button>
        </div>
      ))}
      <div className="row">
        <button type="button" className="button" onClick={add(rectangleRing(-20, -20, 20, 20))}>
          {t('Add rectangle')}
        </button>
        <button type="button" className="button" onClick={add(discRing(0, 0, 20))}>
          {t('Add disc')}
        </button>
      </div>
    </Block>
  );
}

const POWDER_FIELDS: readonly { key: keyof PowderStore; label: Text; unit: Text }[] = [
  { key: 'feed_l', label: 'feed holds', unit: 'l' },
  { key: 'overflow_l', label: 'overflow holds', unit: 'l' },
  { key: 'residueInterval_laserH', label: 'residue interval', unit: 'laser-h' },
];

function PowderBlock({ machine }: { readonly machine: Machine }) {
  const edit = useEdit();
  const { powder } = machine;
  return (
    <Block title={t('POWDER STORES')} open={false}>
      <label className="switch">
        <input
          type="checkbox"
          checked={powder !== null}
          onChange={(event) => {
            const next = event.target.checked ? DEFAULT_POWDER : null;
            edit.press(t('powder stores'), (layout) => setMachine(layout, { powder: next }));
          }}
        />
        {t('stated')}
      </label>
      {powder !== null &&
        POWDER_FIELDS.map(({ key, label, unit }) => (
          <NumberField
            key={key}
            label={t(label)}
            unit={t(unit)}
            value={powder[key]}
            recipe={(layout, value) => setMachine(layout, { powder: { ...powder, [key]: value } })}
          />
        ))}
    </Block>
  );
}

export function MachinePanel() {
  const machine = useBench((state) => state.layout.machine);
  return (
    <div className="fields-panel">
      <LasersBlock />
      <PlatformBlock machine={machine} />
      <DirectionsBlock machine={machine} />
      <KeepOutsBlock machine={machine} />
      <PowderBlock machine={machine} />
    </div>
  );
}
