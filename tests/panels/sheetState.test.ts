/**
 * The state in the title block: what is known of an earlier plate may block hand-over, never clear it.
 */
import { describe, expect, test } from 'vitest';
import { analyse } from '../../src/build/analyse';
import { analyseWith } from '../../src/build/analysis';
import type { Analysis, Problem } from '../../src/build/types';
import { emptyLayout } from '../../src/layout/defaults';
import { demoLayout } from '../../src/layout/demo';
import type { Layout, RevisionState } from '../../src/layout/types';
import { handOverOf, sheetState } from '../../src/panels/title/sheetState';

const demo = analyse(demoLayout());
const fault: Problem = { code: 'part-off-platform', params: {}, parts: ['P01'], blocks: true };
const advice: Problem = { ...fault, code: 'part-in-margin', blocks: false };
const state = (more: Partial<Analysis>, left = false) =>
  sheetState(
    { ...demo, problems: [], checks: 40, ...more },
    left ? { volume_cm3: 1, ranges: [{ from_mm: 0, to_mm: 1 }] } : null,
  );

const filed = (revisionState: RevisionState): Layout => ({
  ...demoLayout(),
  revision: {
    name: 'B',
    date: '2026-11-27',
    reason: '',
    state: revisionState,
    author: 'Ada Quay',
    reviewer: 'Bo Pier',
    derivedFrom: null,
  },
});

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
  test.each([
    ['draft', 'draft, not released'],
    ['reviewed', 'reviewed, not released'],
    ['released', 'released'],
  ] as const)('in the state of its revision: %s', (revision, text) => {
    expect(state({ layout: filed(revision) })).toEqual({ text, blocked: false, why: '' });
    expect(state({ layout: filed(revision), problems: [fault] }).text).toBe('NOT FOR USE');
    expect(state({ layout: filed(revision), whole: 'earlier' }).text).toBe('being checked');
  });
  test('not for use once its revision is superseded', () => {
    expect(state({ layout: filed('superseded') })).toEqual({
      text: 'NOT FOR USE',
      blocked: true,
      why: 'revision B is superseded',
    });
  });
});

describe('a release', () => {
  const handOver = (more: Partial<Analysis>, left = false) =>
    handOverOf(
      { ...demo, problems: [], checks: 40, ...more },
      left ? { volume_cm3: 1, ranges: [{ from_mm: 0, to_mm: 1 }] } : null,
    );
  test('is cleared where all has been checked and nothing blocks', () => {
    expect(handOver({ problems: [advice] })).toEqual({ cleared: true, why: '' });
  });
  test.each([
    ['a fault', { problems: [fault] }, false, '1 fault blocks hand-over'],
    ['unassigned area', {}, true, 'unassigned area blocks hand-over'],
    ['a check that is still to come', { whole: 'earlier' }, false, 'the plate is still being checked'],
    ['problems that nobody has looked for', { checks: 0 }, false, 'the plate is still being checked'],
    ['an empty plate', { layout: emptyLayout() }, false, 'the plate is empty'],
    ['a superseded revision', { layout: filed('superseded') }, false, 'revision B is superseded'],
  ] as const)('waits for %s', (_, more, left, why) => {
    expect(handOver(more as Partial<Analysis>, left)).toEqual({ cleared: false, why });
  });
});
