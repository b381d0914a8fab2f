/** What a revision records, and its way from draft to superseded: every step that is allowed, every one that is not. */
import { describe, expect, test } from 'vitest';
import {
  advanceRevision,
  beginRevision,
  setRevision,
  stateAfter,
  type HandOver,
} from '../../../src/commands/operations/revision';
import { demoLayout } from '../../../src/layout/demo';
import { readLayout } from '../../../src/layout/read';
import type { Result } from '../../../src/layout/result';
import type { Layout, Revision, RevisionState } from '../../../src/layout/types';
import { writeLayout } from '../../../src/layout/write';
import { accepted } from './read';

const CLEAR: HandOver = { cleared: true, why: '' };
const BLOCKED: HandOver = { cleared: false, why: '2 faults block hand-over' };
const STATES = ['draft', 'reviewed', 'released', 'superseded'] as const;
const filed = (fields: Partial<Revision>): Layout => {
  const layout = beginRevision(demoLayout(), '2026-11-27');
  return { ...layout, revision: { ...layout.revision!, author: 'Ada Quay', reviewer: 'Bo Pier', ...fields } };
};
const advance = (layout: Layout, to: RevisionState, handOver = CLEAR) =>
  advanceRevision(layout, to, '2026-11-28', handOver);
const fault = (result: Result<Layout>) => (result.ok ? null : result.fault);

describe('a layout', () => {
  test('is filed as draft A of today, once', () => {
    const first = beginRevision(demoLayout(), '2026-11-27');
    expect(first.revision).toMatchObject({
      name: 'A',
      date: '2026-11-27',
      state: 'draft',
      derivedFrom: null,
    });
    expect(beginRevision(first, '2026-12-01')).toBe(first);
  });

  test('without a revision records nothing and changes no state', () => {
    const layout = demoLayout();
    expect(accepted(setRevision(layout, { name: 'C' }))).toBe(layout);
    expect(accepted(advance(layout, 'reviewed'))).toBe(layout);
  });
});

describe('a draft records', () => {
  test('name, reason, author, reviewer, without blanks at their ends', () => {
    const typed = {
      name: ' C ',
      date: '2026-11-27',
      reason: ' seam ',
      author: 'Cy Mole ',
      reviewer: ' Di Lock',
    };
    const layout = accepted(setRevision(filed({}), typed));
    expect(layout.revision).toEqual({
      name: 'C',
      date: '2026-11-27',
      reason: 'seam',
      author: 'Cy Mole',
      reviewer: 'Di Lock',
      state: 'draft',
      derivedFrom: null,
    });
    expect(readLayout(writeLayout(layout))).toEqual({ ok: true, value: layout });
    expect(layout.parts).toBe(accepted(setRevision(layout, { reason: '' })).parts);
  });

  test.each([
    ['an empty name', { name: ' ' }, 'revision.name'],
    ['a name with a line break', { name: 'B\nC' }, 'revision.name'],
    ['a reason without end', { reason: 'x'.repeat(10_001) }, 'revision.reason'],
  ])('but not %s', (_, fields, path) => {
    expect(fault(setRevision(filed({}), fields))).toMatchObject({
      code: 'layout-wrong-value',
      params: { path },
    });
  });
});

describe('the way of a revision', () => {
  const allowed = ['draft→reviewed', 'reviewed→released', 'released→superseded'];
  const steps = STATES.flatMap((from) => STATES.map((to) => [from, to] as const));

  test.each(steps)('from %s to %s is taken only in order', (from, to) => {
    const result = advance(filed({ state: from }), to);
    if (allowed.includes(`${from}→${to}`))
      expect(accepted(result).revision).toMatchObject({ state: to, date: '2026-11-28', author: 'Ada Quay' });
    else
      expect(fault(result)).toEqual({
        code: 'revision-order',
        params: { name: 'A', state: { state: from }, wanted: { state: to } },
      });
  });

  test('ends with superseded', () => {
    expect(STATES.map(stateAfter)).toEqual(['reviewed', 'released', 'superseded', null]);
  });

  test('leaves the plate as it was', () => {
    const before = filed({});
    const { revision: _new, ...after } = accepted(advance(before, 'reviewed'));
    const { revision: _old, ...plate } = before;
    expect(after).toEqual(plate);
  });
});

describe('a review', () => {
  test.each([
    ['author', 'revision-no-author'],
    ['reviewer', 'revision-no-reviewer'],
  ])('waits for the name of the %s', (who, code) => {
    expect(fault(advance(filed({ [who]: '  ' }), 'reviewed'))?.code).toBe(code);
  });

  test('may look at a plate that is not cleared', () => {
    expect(accepted(advance(filed({}), 'reviewed', BLOCKED)).revision?.state).toBe('reviewed');
  });
});

describe('a release', () => {
  test('waits until nothing blocks hand-over, and says what does', () => {
    expect(fault(advance(filed({ state: 'reviewed' }), 'released', BLOCKED))).toEqual({
      code: 'revision-not-cleared',
      params: { name: 'A', why: '2 faults block hand-over' },
    });
  });

  test('waits for names that a file may lack', () => {
    const nobody = filed({ state: 'reviewed', reviewer: '' });
    expect(fault(advance(nobody, 'released'))?.code).toBe('revision-no-reviewer');
  });

  test('can be superseded whatever is found in the plate later', () => {
    expect(accepted(advance(filed({ state: 'released' }), 'superseded', BLOCKED)).revision?.state).toBe(
      'superseded',
    );
  });
});

test.each(['reviewed', 'released', 'superseded'] as const)('what a %s revision records stays', (state) => {
  expect(fault(setRevision(filed({ state }), { reason: 'later' }))).toEqual({
    code: 'revision-fixed',
    params: { name: 'A', state: { state } },
  });
});
