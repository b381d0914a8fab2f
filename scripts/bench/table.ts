/** Plain text tables for the terminal. */
import type { Timing } from './timing';

export const ms = (value: number): string => `${Number(value.toPrecision(3))} ms`;
export const times = (value: number): string => `${Number(value.toPrecision(3))} ×`;
export const TIMED = ['least', 'median', 'p95', 'runs'];
export const timed = ({ name, least_ms, median_ms, p95_ms, runs }: Timing): string[] => [
  name,
  ms(least_ms),
  ms(median_ms),
  ms(p95_ms),
  String(runs),
];

/** Columns as wide as their widest cell; the first one left-aligned, the others right-aligned. */
export const table = (head: readonly string[], rows: readonly (readonly string[])[]): string => {
  const all = [head, ...rows];
  const widths = head.map((_, k) => Math.max(...all.map((row) => (row[k] ?? '').length)));
  const line = (row: readonly string[]): string =>
    widths
      .map((width, k) => (k === 0 ? (row[k] ?? '').padEnd(width) : (row[k] ?? '').padStart(width)))
      .join('  ');
  return [line(head), widths.map((width) => '-'.repeat(width)).join('  '), ...rows.map(line)].join('\n');
};
