/**
 * One picture for each division: the platform and its lines, nothing else.
 */
import { type Text } from '../../language/index';
import type { Strategy } from '../../layout/types';

export type DivisionChoice = 'quadrants' | 'strips-x' | 'strips-y' | 'wholeField' | 'drawn';

const LINES: Readonly<Record<DivisionChoice, string>> = {
  quadrants: 'M8.5 1.5v14M1.5 8.5h14',
  'strips-x': 'M5 1.5v14M8.5 1.5v14M12 1.5v14',
  'strips-y': 'M1.5 5h14M1.5 8.5h14M1.5 12h14',
  wholeField: '',
  drawn: 'M1.5 11 6 9l3-5 6.5 1M9 4l2 11.5',
};

export function DivisionIcon({ choice }: { readonly choice: DivisionChoice }) {
  return (
    <svg width="17" height="17" viewBox="0 0 17 17" aria-hidden="true" fill="none" stroke="currentColor">
      <path d="M1.5 1.5h14v14h-14z" strokeWidth="2" />
      <path d={LINES[choice]} strokeWidth="1" />
    </svg>
  );
}

export const DIVISIONS: readonly {
  readonly choice: DivisionChoice;
  readonly label: Text;
  readonly strategy: Strategy;
  readonly run_deg: number;
}[] = [
  { choice: 'quadrants', label: 'Quadrants', strategy: 'quadrants', run_deg: 90 },
  { choice: 'strips-x', label: 'Strips side by side in x', strategy: 'strips', run_deg: 90 },
  { choice: 'strips-y', label: 'Strips front to back in y', strategy: 'strips', run_deg: 0 },
  { choice: 'wholeField', label: 'Whole field', strategy: 'wholeField', run_deg: 90 },
  { choice: 'drawn', label: 'Drawn zones', strategy: 'drawn', run_deg: 90 },
];
