/**
 * The state in the title block: what is known of an earlier plate may block hand-over, never clear it.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { analyseWith } from '../../src/build/analysis';
import type { Analysis, Problem } from '../../src/build/types';
import { emptyLayout } from '../../src/layout/defaults';
import { demoLayout } from '../../src/layout/demo';
import { sheetState } from '../../src/panels/title/TitleBlock';

const demo = analyse(demoLayout());
const fault: Problem = { code: 'part-off-platform', params: {}, parts: ['P01'], blocks: true };
const advice: Problem = { ...fault, code: 'part-in-margin', blocks: false };
const state = (more: Partial<Analysis>, left = false) =>
  sheetState(
    { ...demo, problems: [], checks: 40, ...more },
    left ? { volume_cm3: 1, ranges: [{ from_mm: 0, to_mm: 1 }] } : null,
  );

describe('the sheet is', () => {
  test('a draft where nothing blocks hand-over', () => {
    expect(state({ problems: [advice] })).toMatchObject({ text: 'draft, not released', blocked: false });
  });
  test('not for use with a fault, and says how many', () => {
    expect(state({ problems: [fault, advice, fault] })).toEqual({
      text: 'NOT FOR USE',
      blocked: true,
      why: '2 faults block hand-over',
    });
  });
  test('not for use with unassigned area, whatever the list of problems knows', () => {
    expect(state({}, true)).toMatchObject({ blocked: true, why: 'unassigned area blocks hand-over' });
  });
  test('being checked while only an earlier plate is known, unless that one was faulty', () => {
    expect(state({ whole: 'earlier' })).toMatchObject({ text: 'being checked', blocked: false });
    expect(state({ whole: 'none' })).toMatchObject({ text: 'being checked', blocked: false });
    expect(state({ whole: 'earlier', problems: [fault] }).blocked).toBe(true);
  });
  test('being checked, never a draft, while nobody has looked for problems', () => {
    const { problems, checks, whole, ...rest } = analyseWith(demoLayout(), null);
    expect([problems.length, checks, whole]).toEqual([0, 0, 'present']);
    expect(sheetState({ ...rest, problems, checks, whole }, null)).toMatchObject({ text: 'being checked' });
  });
  test('an empty plate without parts', () => {
    expect(sheetState(analyse(emptyLayout()), null).text).toBe('empty plate');
  });
});
