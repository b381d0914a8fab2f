/** What the check page hands to the plate: the choices for all, the choices for one, nothing that was left out. */
import { describe, expect, test } from 'vitest';
import { chosenShapes, firstChoices, withShapeChoice } from '../../src/screens/importCheck/choices';
import type { PlacedShape } from '../../src/import/types';

const shape = (name: string): PlacedShape => ({
  name,
  rings: [{ circle_mm: [0, 0, 5] }],
  area_mm2: 78.54,
  width_mm: 10,
  height_mm: 10,
  at_mm: [0, 0],
});
const placed = [shape('a'), shape('b')];

describe('shapes for the plate', () => {
  test('take the height and copies of all', () => {
    const chosen = chosenShapes(placed, { ...firstChoices(20, 0.01), copies: 3 });
    expect(chosen.map(({ shape: { slabs }, copies }) => [slabs[0]?.to_mm, copies])).toEqual([
      [20, 3],
      [20, 3],
    ]);
  });
  test('take their own height where one was typed', () => {
    const choices = withShapeChoice(firstChoices(20, 0.01), 1, { height_mm: 12.5 });
    expect(chosenShapes(placed, choices).map(({ shape: { slabs } }) => slabs[0]?.to_mm)).toEqual([20, 12.5]);
  });
  test('stay away where they were not wanted', () => {
    const choices = withShapeChoice(firstChoices(20, 0.01), 0, { use: false });
    expect(chosenShapes(placed, choices).map(({ name }) => name)).toEqual(['b']);
  });
});
