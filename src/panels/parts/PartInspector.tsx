/**
 * The selected parts as numbers: place, turn, height, seams, pinned laser, time factor; offsets, copies, duplicate, delete.
 * With several parts selected a field says "mixed" where they differ; a typed value goes to all of them, "+=5" to each from
 * its own. Turned together, they swing as a group.
 */
import { t } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { useFieldsKey } from './fieldsKey';
import { setPartFields, timeFactorEach } from '../../commands/operations';
import { NumberField } from '../controls/fields';
import { Block } from '../controls/Block';
import { Choice } from '../controls/Choice';
import { SegmentedField } from '../controls/Segmented';
import { CommandButton } from '../header/CommandButton';
import { useRunCommand } from '../useCommands';
import { OffsetFields } from './OffsetFields';
import { PlaceFields, useChosenParts, type SelectedProps } from './PlaceFields';
import { IdField, MarkButtons } from './MarkFields';
import { RowsForm } from './RowsForm';

/** The pinned laser where the parts differ in it. */
const MIXED = 'mixed';

function ExposureFields({ part, ids }: SelectedProps) {
  const run = useRunCommand();
  const lasers = useBench((state) => state.layout.machine.lasers);
  const parts = useChosenParts(ids);
  const seams = parts.every((other) => other.seams === part.seams) ? part.seams : '';
  const pinned = parts.every((other) => other.laser === part.laser);
  return (
    <>
      <SegmentedField
        label={t('seams')}
        value={seams}
        options={[
          { value: 'free', label: t('Seams free'), content: t('free') },
          { value: 'none', label: t('Seams none'), content: t('none ¦ seams') },
        ]}
        onChoose={(chosen) => run(`seams-${chosen}`)}
      />
      <Choice
        label={t('pinned laser')}
        value={pinned ? String(1 + lasers.findIndex(({ id }) => id === part.laser)) : MIXED}
        testId="part-laser"
        options={[
          ...(pinned ? [] : [{ value: MIXED, label: t('mixed') }]),
          { value: '0', label: t('by the zones') },
          ...lasers.map(({ id }, index) => ({ value: String(index + 1), label: id })),
        ]}
        onChoose={(number) => number !== MIXED && run(number === '0' ? 'unpin' : `pin-laser-${number}`)}
      />
      <NumberField
        label={t('time factor')}
        value={part.timeFactor}
        values={parts.map(({ timeFactor }) => timeFactor)}
        step={0.05}
        min={0.001}
        max={1000}
        testId="part-time-factor"
        recipe={(layout, timeFactor) => setPartFields(layout, ids, { timeFactor })}
        recipeEach={(layout, to) => timeFactorEach(layout, ids, to)}
      />
    </>
  );
}

export function PartInspector() {
  const ids = useBench((state) => state.view.selection);
  const part = useBench((state) => state.layout.parts.find(({ id }) => id === ids.at(-1)));
  const key = useFieldsKey(ids);
  if (part === undefined) return null;
  const title =
    ids.length === 1 ? t('PART {part}', { part: part.id }) : t('{count} PARTS', { count: ids.length });
  return (
    <Block title={title} note={ids.length === 1 ? part.shape : t('values go to all')} testId="part-inspector">
      {ids.length === 1 && <IdField key={`id ${key}`} id={part.id} />}
      <PlaceFields key={`place ${key}`} part={part} ids={ids} />
      <ExposureFields key={`exposure ${key}`} part={part} ids={ids} />
      <div className="row">
        <CommandButton id="duplicate">{t('Duplicate')}</CommandButton>
        <CommandButton id="delete-parts">{t('Delete')}</CommandButton>
        <MarkButtons ids={ids} />
      </div>
      <details className="inner" data-testid="offsets">
        <summary>{t('Move and turn by')}</summary>
        <OffsetFields key={`offset ${key}`} ids={ids} />
      </details>
      <details className="inner">
        <summary>{t('Copies in rows')}</summary>
        <RowsForm key={`rows ${key}`} ids={ids} />
      </details>
    </Block>
  );
}
