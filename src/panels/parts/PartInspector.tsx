/**
 * The selected parts as numbers: place, turn, height, seams, pinned laser, time factor; copies, duplicate, delete. With
 * several parts selected a typed value goes to all of them, except the place, which belongs to one, and the turn
 * together, which swings them as a group.
 */
import { useAnalysis, useBench, useWorkbench } from '../../canvas/bench';
import {
  addedParts,
  canSetHeight,
  duplicateParts,
  placePart,
  removeParts,
  setPartFields,
  setPartHeight,
  setPartTurn,
  turnTogether,
} from '../../commands/operations';
import type { Layout, Part, PartId } from '../../layout/types';
import { AngleField, LengthField, NumberField } from '../controls/fields';
import { Block } from '../controls/Block';
import { Choice } from '../controls/Choice';
import { SegmentedField } from '../controls/Segmented';
import { useEdit } from '../useEdit';
import { RowsForm } from './RowsForm';

interface SelectedProps {
  readonly part: Part;
  readonly ids: readonly PartId[];
}

function PlaceFields({ part }: { readonly part: Part }) {
  const [x, y] = part.at_mm;
  return (
    <>
      <LengthField
        label="x"
        value={x}
        testId="part-x"
        recipe={(layout, value) => placePart(layout, part.id, value, y)}
      />
      <LengthField
        label="y"
        value={y}
        testId="part-y"
        recipe={(layout, value) => placePart(layout, part.id, x, value)}
      />
    </>
  );
}

function HeightField({ part, ids }: SelectedProps) {
  const analysis = useAnalysis();
  const index = analysis.layout.parts.indexOf(part);
  const able = canSetHeight(analysis.layout, part.id);
  return (
    <LengthField
      label="height"
      value={analysis.parts[index]?.height_mm ?? 0}
      min={0.001}
      max={10_000}
      disabled={!able}
      hint={able ? undefined : 'A shape of several slabs keeps its steps.'}
      testId="part-height"
      recipe={(layout, value) => setPartHeight(layout, ids, value)}
    />
  );
}

function ExposureFields({ part, ids }: SelectedProps) {
  const edit = useEdit();
  const lasers = useBench((state) => state.layout.machine.lasers);
  const set = (label: string, fields: Parameters<typeof setPartFields>[2]): void =>
    edit.press(label, (layout) => setPartFields(layout, ids, fields));
  return (
    <>
      <SegmentedField
        label="seams"
        value={part.seams}
        options={[
          { value: 'free', label: 'Seams free', content: 'free' },
          { value: 'none', label: 'No seams', content: 'none' },
        ]}
        onChoose={(seams) => set('seams', { seams })}
      />
      <Choice
        label="pinned laser"
        value={part.laser ?? ''}
        testId="part-laser"
        options={[
          { value: '', label: 'by the zones' },
          ...lasers.map(({ id }) => ({ value: id, label: id })),
        ]}
        onChoose={(laser) => set('pinned laser', { laser: laser === '' ? null : laser })}
      />
      <NumberField
        label="time factor"
        value={part.timeFactor}
        step={0.05}
        min={0.001}
        max={1000}
        testId="part-time-factor"
        recipe={(layout, timeFactor) => setPartFields(layout, ids, { timeFactor })}
      />
    </>
  );
}

function PartButtons({ ids }: { readonly ids: readonly PartId[] }) {
  const bench = useWorkbench();
  const edit = useEdit();
  const added = (label: string, recipe: (layout: Layout) => Layout): void => {
    const before = bench.store.getState().layout;
    edit.press(label, recipe);
    const selection = addedParts(before, bench.store.getState().layout);
    if (selection.length > 0) bench.setView({ selection });
  };
  return (
    <div className="row">
      <button
        type="button"
        className="button"
        onClick={() => added('duplicate', (layout) => duplicateParts(layout, ids))}
      >
        Duplicate
      </button>
      <button
        type="button"
        className="button"
        onClick={() => edit.press('delete', (layout) => removeParts(layout, ids))}
      >
        Delete
      </button>
    </div>
  );
}

export function PartInspector() {
  const ids = useBench((state) => state.view.selection);
  const part = useBench((state) => state.layout.parts.find(({ id }) => id === ids.at(-1)));
  if (part === undefined) return null;
  const title = ids.length === 1 ? `PART ${part.id}` : `${ids.length} PARTS`;
  const key = ids.join(' ');
  return (
    <Block title={title} note={ids.length === 1 ? part.shape : 'values go to all'} testId="part-inspector">
      {ids.length === 1 && <PlaceFields key={`place ${key}`} part={part} />}
      <AngleField
        key={`turn ${key}`}
        label={ids.length === 1 ? 'turn' : 'turn, each'}
        value={part.turn_deg}
        testId="part-turn"
        recipe={(layout, value) => setPartTurn(layout, ids, value)}
      />
      {ids.length > 1 && (
        <AngleField
          key={`together ${key}`}
          label="turn together by"
          value={0}
          testId="group-turn"
          hint="About the middle of their common box."
          recipe={(layout, value) => turnTogether(layout, ids, value)}
        />
      )}
      <HeightField key={`height ${key}`} part={part} ids={ids} />
      <ExposureFields key={`exposure ${key}`} part={part} ids={ids} />
      <PartButtons ids={ids} />
      <details className="inner">
        <summary>Copies in rows</summary>
        <RowsForm key={`rows ${key}`} ids={ids} />
      </details>
    </Block>
  );
}
