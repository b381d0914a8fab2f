/**
 * The selected parts as numbers: place, turn, height, seams, pinned laser, time factor; copies, duplicate, delete. With
 * several parts selected a typed value goes to all of them, except the place, which belongs to one, and the turn
 * together, which swings them as a group.
 */
import { useAnalysis, useBench } from '../../canvas/bench';
import {
  canSetHeight,
  placePart,
  setPartFields,
  setPartHeight,
  setPartTurn,
  turnTogether,
} from '../../commands/operations';
import type { Part, PartId } from '../../layout/types';
import { AngleField, LengthField, NumberField } from '../controls/fields';
import { Block } from '../controls/Block';
import { Choice } from '../controls/Choice';
import { SegmentedField } from '../controls/Segmented';
import { CommandButton } from '../header/CommandButton';
import { useRunCommand } from '../useCommands';
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
  const run = useRunCommand();
  const lasers = useBench((state) => state.layout.machine.lasers);
  return (
    <>
      <SegmentedField
        label="seams"
        value={part.seams}
        options={[
          { value: 'free', label: 'Seams free', content: 'free' },
          { value: 'none', label: 'Seams none', content: 'none' },
        ]}
        onChoose={(seams) => run(`seams-${seams}`)}
      />
      <Choice
        label="pinned laser"
        value={String(1 + lasers.findIndex(({ id }) => id === part.laser))}
        testId="part-laser"
        options={[
          { value: '0', label: 'by the zones' },
          ...lasers.map(({ id }, index) => ({ value: String(index + 1), label: id })),
        ]}
        onChoose={(number) => run(number === '0' ? 'unpin' : `pin-laser-${number}`)}
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
      <div className="row">
        <CommandButton id="duplicate">Duplicate</CommandButton>
        <CommandButton id="delete-parts">Delete</CommandButton>
      </div>
      <details className="inner">
        <summary>Copies in rows</summary>
        <RowsForm key={`rows ${key}`} ids={ids} />
      </details>
    </Block>
  );
}
