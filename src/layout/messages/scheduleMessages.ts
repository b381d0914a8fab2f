/**
 * Faults of what is typed for a schedule: attended hours, records of builds. The rules of the table stand in messages.ts.
 */
import type { Message } from './message';

export const SCHEDULE_MESSAGES = {
  'attended-unreadable': {
    text: '“{found}” is not a range of clock times.',
    advice: 'Type ranges such as 06:00-22:00, 23:00-24:00, with commas between them.',
    blocks: false,
  },
  'attended-backwards': {
    text: 'The range {from}-{to} does not end after it begins.',
    advice: 'What runs over midnight is two ranges: one up to 24:00, one from 00:00 on the next day.',
    blocks: false,
  },
  'attended-overlap': {
    text: 'The ranges {one} and {other} overlap.',
    advice: 'Make them one range, or end the first where the second begins.',
    blocks: false,
  },
  'correction-no-records': {
    text: 'No build is recorded to learn from.',
    advice: 'Record the planned and the real hours of at least one finished build.',
    blocks: false,
  },
  'correction-bad-record': {
    text: 'Record {record} says {planned} h planned and {real} h real.',
    advice: 'Both are numbers above 0, up to {most} h.',
    blocks: false,
  },
  'correction-out-of-range': {
    text: 'The recorded builds give a factor of {found}.',
    advice:
      'A factor lies between {least} and {largest}, its spread below 1000 %: look for hours in the wrong unit.',
    blocks: false,
  },
  'records-not-kept': {
    text: 'This browser does not keep the recorded builds: {detail}',
    advice: 'They are lost with this page; factor and spread stay in the layout.',
    blocks: false,
  },
} as const satisfies Record<string, Message>;
