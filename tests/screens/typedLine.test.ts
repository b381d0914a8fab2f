/** Which field holds the number of which grip. */
import { expect, test } from 'vitest';
import { fieldOfGrip } from '../../src/screens/useTypedLine';

test.each([
  ['line-quadrantX', 'crossing-x'],
  ['line-quadrantY-rear', 'crossing-y'],
  ['line-strip-2', 'strip-line-2'],
  ['line-strip-10-rear', 'strip-line-10'],
  ['line-gas', null],
  ['part-turn', null],
])('the grip %s belongs to the field %s', (grip, field) => {
  expect(fieldOfGrip(grip)).toBe(field);
});
