/**
 * Place, turn and height of the selected parts. Where several differ the field says so; a value goes to all of them, a
 * change ("+=5") to each. Platform millimetres, degrees counter-clockwise from +x.
 */
import { t } from '../../language/index';
import { useMemo } from 'react';
import { useAnalysis, useBench } from '../../canvas/bench';
import {
  canSetHeight,
  heightEach,
  placeEach,
  setPartHeight,
  setPartTurn,
  turnEach,
  turnTogether,
  type Axis,
} from '../../commands/operations';
import type { Part, PartId } from '../../layout/types';
import { AngleField, LengthField } from '../controls/fields';

export interface SelectedProps {
  /** The one that was selected last. */
  readonly part: Part;
  readonly ids: readonly PartId[];
}

/** The parts of these ids, in the layout's order. */
export function useChosenParts(ids: readonly PartId[]): readonly Part[] {
  const parts = useBench((state) => state.layout.parts);
  return useMemo(() => {
    const chosen = new Set(ids);
    return parts.filter(({ id }) => chosen.has(id));
  }, [parts, ids]);
}

const AXES: readonly (readonly [Axis, 0 | 1])[] = [
  ['x', 0],
  ['y', 1],
];

function HeightField({ part, ids }: SelectedProps) {
  const analysis = useAnalysis();
  const { layout } = analysis;
  const height = (id: PartId): number =>
    analysis.parts[layout.parts.findIndex((other) => other.id === id)]?.height_mm ?? 0;
  const able = ids.filter((id) => canSetHeight(layout, id));
  return (
    <LengthField
      label={t('height')}
      value={height(part.id)}
      values={ids.map(height)}
      min={0.001}
      max={10_000}
      disabled={able.length === 0}
      hint={able.length === ids.length ? undefined : t('A shape of several slabs keeps its steps.')}
      testId="part-height"
      recipe={(now, value) => setPartHeight(now, able, value)}
      recipeEach={(now, to) => heightEach(now, able, height, to)}
    />
  );
}

function TurnFields({ part, ids }: SelectedProps) {
  const parts = useChosenParts(ids);
  return (
    <>
      <AngleField
        label={t(ids.length === 1 ? 'turn' : 'turn, each')}
        value={part.turn_deg}
        values={parts.map(({ turn_deg }) => turn_deg)}
        testId="part-turn"
        recipe={(layout, value) => setPartTurn(layout, ids, value)}
        recipeEach={(layout, to) => turnEach(layout, ids, to)}
      />
      {ids.length > 1 && (
        <AngleField
          label={t('turn together by')}
          value={0}
          testId="group-turn"
          hint={t('About the middle of their common box.')}
          recipe={(layout, value) => turnTogether(layout, ids, value)}
          recipeEach={(layout, to) => turnTogether(layout, ids, to(0))}
        />
      )}
    </>
  );
}

export function PlaceFields({ part, ids }: SelectedProps) {
  const parts = useChosenParts(ids);
  return (
    <>
      {AXES.map(([axis, index]) => (
        <LengthField
          key={axis}
          label={axis}
          value={part.at_mm[index]}
          values={parts.map(({ at_mm }) => at_mm[index])}
          testId={`part-${axis}`}
          recipe={(layout, value) => placeEach(layout, ids, axis, () => value)}
          recipeEach={(layout, to) => placeEach(layout, ids, axis, to)}
        />
      ))}
      <TurnFields part={part} ids={ids} />
      <HeightField part={part} ids={ids} />
    </>
  );
}
