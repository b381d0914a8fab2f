/**
 * The layout's note, the process numbers that the time model uses, and the limits that are settings. Units as shown beside each field.
 */
import { t, type Text } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { setLimits, setProcess, setTexts } from '../../commands/operations';
import type { Limits, Process } from '../../layout/types';
import { Block } from '../controls/Block';
import { LengthField, NumberField } from '../controls/fields';
import { NoteField } from '../controls/NoteField';
import { SegmentedField } from '../controls/Segmented';
import { TextField } from '../controls/TextField';
import { useEdit } from '../useEdit';

interface Entry<Key> {
  readonly key: Key;
  readonly label: Text;
  /** "mm" reads lengths; anything else reads bare numbers. */
  readonly unit: string;
  readonly step: number;
  readonly hint?: Text;
}
type ProcessNumber = Exclude<keyof Process, 'name' | 'vectorCount'>;

const TIME: readonly Entry<ProcessNumber>[] = [
  { key: 'layer_mm', label: 'layer t', unit: 'mm', step: 0.01 },
  { key: 'hatch_mm', label: 'hatch distance h', unit: 'mm', step: 0.01 },
  { key: 'speed_mm_s', label: 'hatch speed v', unit: 'mm/s', step: 50 },
  { key: 'hatchInset_mm', label: 'hatch inset', unit: 'mm', step: 0.01 },
  { key: 'vector_mm', label: 'vector length s', unit: 'mm', step: 1 },
  { key: 'vectorGap_ms', label: 'gap per vector t_v', unit: 'ms', step: 0.1 },
  { key: 'contours', label: 'contours', unit: '', step: 1 },
  { key: 'contourSpeed_mm_s', label: 'contour speed v_c', unit: 'mm/s', step: 50 },
  { key: 'pieceGap_s', label: 'gap per piece t_p', unit: 's', step: 0.01 },
  { key: 'minLayer_s', label: 'minimum layer time', unit: 's', step: 1 },
  { key: 'seamOverlap_mm', label: 'seam overlap', unit: 'mm', step: 0.01 },
];
const POWDER: readonly Entry<ProcessNumber>[] = [
  { key: 'density_g_cm3', label: 'density', unit: 'g/cm³', step: 0.01 },
  { key: 'packing', label: 'packing', unit: '', step: 0.01 },
  { key: 'doseFactor', label: 'dose factor', unit: '', step: 0.1 },
];
const LIMITS: readonly Entry<keyof Limits>[] = [
  { key: 'spacing_mm', label: 'spacing of parts', unit: 'mm', step: 0.5 },
  { key: 'crumbArea_mm2', label: 'crumb: area below', unit: 'mm²', step: 1 },
  { key: 'crumbWidth_mm', label: 'crumb: width below', unit: 'mm', step: 0.1 },
  {
    key: 'plumeHalfWidth_mm',
    label: 'plume half-width',
    unit: 'mm',
    step: 1,
    hint: 'No published value was found; a setting.',
  },
  { key: 'chainGap_mm', label: 'chain gap', unit: 'mm', step: 0.01 },
];

interface EntriesProps<Key extends string> {
  readonly entries: readonly Entry<Key>[];
  readonly values: Readonly<Record<Key, number>>;
  recipe: (fields: Partial<Record<Key, number>>) => Parameters<typeof LengthField>[0]['recipe'];
}

function Entries<Key extends string>({ entries, values, recipe }: EntriesProps<Key>) {
  return entries.map(({ key, label, unit, step, hint }) => {
    const Field = unit === 'mm' ? LengthField : NumberField;
    return (
      <Field
        key={key}
        label={t(label)}
        unit={unit}
        step={step}
        hint={hint && t(hint)}
        value={values[key]}
        testId={`setting-${key}`}
        recipe={(layout, value) => recipe({ [key]: value } as Partial<Record<Key, number>>)(layout, value)}
      />
    );
  });
}

function NoteBlock() {
  const note = useBench((state) => state.layout.note);
  return (
    <Block title={t('NOTE')}>
      <NoteField
        label={t('note of the layout')}
        value={note}
        testId="layout-note"
        recipe={(layout, text) => setTexts(layout, { note: text })}
      />
    </Block>
  );
}

type Recipe = Parameters<typeof LengthField>[0]['recipe'];
const set =
  (fields: Partial<Process>): Recipe =>
  (layout) =>
    setProcess(layout, fields);

function ExposureBlock({ process }: { readonly process: Process }) {
  const edit = useEdit();
  return (
    <Block title={t('EXPOSURE')}>
      <TextField
        label={t('process')}
        value={process.name}
        recipe={(layout, name) => setProcess(layout, { name })}
      />
      <Entries entries={TIME} values={process} recipe={set} />
      <SegmentedField
        label={t('vectors by')}
        value={process.vectorCount}
        options={[
          { value: 'areaAndOutline', label: t('Vectors by area and outline'), content: t('A and P') },
          { value: 'area', label: t('Vectors by area'), content: 'A' },
        ]}
        onChoose={(vectorCount) =>
          edit.press(t('vectors by'), (layout) => setProcess(layout, { vectorCount }))
        }
      />
    </Block>
  );
}

export function ProcessPanel() {
  const process = useBench((state) => state.layout.process);
  const limits = useBench((state) => state.layout.limits);
  return (
    <div className="fields-panel">
      <NoteBlock />
      <ExposureBlock process={process} />
      <Block title={t('POWDER')}>
        <Entries entries={POWDER} values={process} recipe={set} />
      </Block>
      <Block title={t('LIMITS')}>
        <Entries
          entries={LIMITS}
          values={limits}
          recipe={(fields) => (layout) => setLimits(layout, fields)}
        />
      </Block>
    </div>
  );
}
