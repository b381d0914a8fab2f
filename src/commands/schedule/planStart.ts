/** Plans the build to start at the next full hour, by the clock of this computer. */
import { layoutOf, where } from '../make';
import { planStart as plan } from '../operations';
import type { Command } from '../types';

const two = (value: number): string => String(value).padStart(2, '0');

/** The next full hour as local time without a zone: "2026-11-27T16:00". */
export function nextFullHour(now: Date): string {
  const at = new Date(now.getFullYear(), now.getMonth(), now.getDate(), now.getHours() + 1);
  const date = [at.getFullYear(), two(at.getMonth() + 1), two(at.getDate())].join('-');
  return `${date}T${two(at.getHours())}:00`;
}

const label = 'Plan the start of the build';

export const planStart: Command = {
  id: 'plan-start',
  label,
  group: 'edit',
  keys: [],
  when: where('a start is planned already', (context) => layoutOf(context).schedule === null),
  run: ({ bench }) => {
    const planned = plan(bench.store.getState().layout, nextFullHour(new Date()));
    if (planned.ok) bench.change(label, () => planned.value);
    else bench.notify(planned.fault);
  },
};
