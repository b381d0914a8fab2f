/**
 * Measuring on the plan. Two blocks 20 × 20 stand at (±60, −60): their facing corners are (−50, −50) and (50, −50); a stepped
 * part, 30 × 30, stands at (0, 60). 2 px a millimetre, so that 8 px of reach are 4 mm. Expected values by hand.
 */
import { afterEach, describe, expect, test } from 'vitest';
import { apart } from '../../src/build/apart';
import { caughtAt, type CatchField } from '../../src/canvas/catching';
import { measuredWords } from '../../src/canvas/measuredWords';
import { runCommand } from '../../src/commands';
import { moveParts } from '../../src/commands/operations';
import { NO_MODIFIERS } from '../../src/canvas/snapping';
import { speakEnglish, speakGerman } from '../../src/language/index';
import { FIRST } from '../../src/language/de/first';
import { REST } from '../../src/language/de/rest';
import { workplace } from '../commands/bench';
import { planHands, quadrantsPlate, SHIFT } from './hands';

afterEach(speakEnglish);

const measuring = () => {
  const hands = planHands();
  hands.bench.setView({ tool: 'measure' });
  return hands;
};
const CTRL = { ...NO_MODIFIERS, ctrl: true };

describe('a measure on the plan', () => {
  test('goes from corner to corner where both are near', () => {
    const hands = measuring();
    hands.press(-51, -48.5);
    hands.move(49, -52);
    hands.release(49, -52);
    expect(hands.view().measured).toEqual({ from: { x: -50, y: -50 }, to: { x: 50, y: -50 }, parts: null });
    expect(hands.bench.history()).toEqual({ undo: null, redo: null });
  });
  test('is free with Ctrl held, and in steps of 45° with Shift', () => {
    const hands = measuring();
    hands.press(-51, -48.5, CTRL);
    hands.move(-21, -44.5, CTRL);
    hands.release(-21, -44.5, CTRL);
    expect(hands.view().measured).toMatchObject({ from: { x: -51, y: -48.5 }, to: { x: -21, y: -44.5 } });
    hands.press(-100, 100);
    hands.move(-70, 104, SHIFT);
    hands.release(-70, 104, SHIFT);
    expect(hands.view().measured).toMatchObject({ from: { x: -100, y: 100 }, to: { x: -70, y: 100 } });
  });
  test('takes two clicks as well, and follows the pointer between them', () => {
    const hands = measuring();
    hands.click(-50, -50);
    hands.move(30, 20);
    hands.frame();
    expect(hands.view().measured).toMatchObject({ from: { x: -50, y: -50 } });
    hands.click(50, -70);
    expect(hands.view().measured).toMatchObject({ from: { x: -50, y: -50 }, to: { x: 50, y: -70 } });
    expect(hands.host.ui.getState().measureFrom).toBeNull();
  });
  test('that is given up between two clicks leaves nothing, and a change of the plate gives it up', () => {
    const hands = measuring();
    hands.click(-50, -50);
    hands.move(30, 20);
    hands.frame();
    expect(hands.controller.key('Escape')).toBe(true);
    expect(hands.view().measured).toBeNull();
    expect(hands.host.ui.getState()).toMatchObject({ measureFrom: null, caught: null });
  });
  test('goes when the plate changes, and by Escape before the tool does', () => {
    const { bench, context, layout } = workplace(quadrantsPlate());
    const measured = { from: { x: 0, y: 0 }, to: { x: 3, y: 4 }, parts: null };
    bench.setView({ tool: 'measure', measured });
    runCommand('step-back', context);
    expect(bench.store.getState().view).toMatchObject({ tool: 'measure', measured: null });
    bench.setView({ measured });
    bench.change('move', () => moveParts(layout(), ['P01'], 1, 0));
    expect(bench.store.getState().view.measured).toBeNull();
  });
});

describe('what catches a place', () => {
  const circle = Float64Array.from({ length: 128 }, (_, i) => {
    const angle = (2 * Math.PI * Math.floor(i / 2)) / 64;
    return 10 * (i % 2 === 0 ? Math.cos(angle) : Math.sin(angle));
  });
  const square = Float64Array.of(30, 0, 50, 0, 50, 20, 30, 20);
  const field: CatchField = {
    regions: [[circle], [square]],
    lines: [{ key: { kind: 'quadrantX' }, nx: 1, ny: 0, c: 25 }],
    edges: [],
    grid_mm: 5,
  };
  test('is the middle of a circle, not one of the short lines that draw it', () => {
    const found = caughtAt({ x: 0.5, y: -0.5 }, field, 2);
    expect(found?.by).toBe('centre');
    expect(found?.at.x).toBeCloseTo(0, 9);
    expect(caughtAt({ x: 0, y: 11 }, field, 2)).toMatchObject({ by: 'edge' });
  });
  test('is a corner before an edge, an edge or a line before the grid', () => {
    expect(caughtAt({ x: 31, y: 1 }, field, 2)).toEqual({ at: { x: 30, y: 0 }, by: 'corner' });
    expect(caughtAt({ x: 40, y: 1.5 }, field, 2)).toEqual({ at: { x: 40, y: 0 }, by: 'edge' });
    expect(caughtAt({ x: 24, y: 41 }, field, 2)).toEqual({ at: { x: 25, y: 41 }, by: 'line' });
    expect(caughtAt({ x: -39, y: 41 }, field, 2)).toEqual({ at: { x: -40, y: 40 }, by: 'grid' });
    expect(caughtAt({ x: -37.5, y: 42.5 }, field, 2)).toBeNull();
  });
});

describe('the distance of parts', () => {
  const { bench, context } = workplace(quadrantsPlate());
  test('is that of their outlines', () => {
    const analysis = bench.analysis();
    expect(apart(analysis, 'P01', 'P02', 1)?.distance_mm).toBeCloseTo(100, 9);
    expect(apart(analysis, 'P03', 'P01', 1)?.distance_mm).toBeCloseTo(Math.hypot(35, 95), 9);
    expect(apart(analysis, 'P01', null, 1)?.parts).toEqual(['P01', 'P02']);
  });
  test('is none where another part overlaps, however near the next one stands', () => {
    const layout = moveParts(quadrantsPlate(), ['P02'], -110, 0);
    const overlapping = workplace(layout);
    expect(apart(overlapping.bench.analysis(), 'P01', null, 1)).toBeNull();
    expect(apart(overlapping.bench.analysis(), 'P01', 'P03', 1)?.parts).toEqual(['P01', 'P03']);
  });
  test('is measured by a command from the part selected last, and said in both languages', () => {
    bench.setView({ selection: ['P02', 'P01'] });
    runCommand('measure-parts', context);
    const { measured } = bench.store.getState().view;
    expect(measured?.parts).toEqual(['P01', 'P02']);
    expect(measuredWords(measured!)).toMatch(/^P01 to P02: 100\.0\u202fmm, Δx 100\.0\u202fmm, Δy 0/);
    speakGerman({ ...FIRST, ...REST });
    expect(measuredWords(measured!)).toMatch(/^P01 bis P02: 100,0\u202fmm, Δx 100,0\u202fmm/);
  });
});
