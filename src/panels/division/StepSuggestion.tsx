/**
 * Offers the whole field over the range of height that wastes most, with the hours it takes; once it is done, the hours
 * before and now stand there until the plate changes. Hours are estimates.
 */
import { useState } from 'react';
import { useAnalysisLater } from '../../canvas/bench';
import type { WorstRange } from '../../build/worst';
import type { Layout } from '../../layout/types';
import { formatField, formatHours } from '../../units/format';
import type { Hours } from '../../units/types';
import { useEdit } from '../useEdit';
import { worstText } from '../views/worstText';
import { useSuggestion, type Found } from './useSuggestion';
import { useSaid } from '../spoken/say';

interface Done {
  readonly layout: Layout;
  readonly before_h: Hours;
}

const wholeFieldWords = ({ from_mm, to_mm, toTop }: WorstRange): string =>
  toTop
    ? `Whole field from ${formatField(from_mm)} mm on`
    : `Whole field from ${formatField(from_mm)} to ${formatField(to_mm)} mm`;

function figures(now_h: Hours, found: Found | null): string {
  if (found === null) return `${formatHours(now_h)} now (estimate)`;
  const { time_h, cutParts } = found;
  const cuts = cutParts === 0 ? 'no part' : cutParts === 1 ? '1 part' : `up to ${cutParts} parts`;
  return `${formatHours(now_h)} now, ${formatHours(time_h)} with it, ${cuts} cut there (estimates)`;
}

export function StepSuggestion() {
  const edit = useEdit();
  const analysis = useAnalysisLater();
  const suggestion = useSuggestion(analysis);
  const [done, setDone] = useState<Done | null>(null);
  const { layout, build, whole } = analysis;
  const gained =
    done?.layout === layout && whole === 'present'
      ? `${formatHours(done.before_h)} before, ${formatHours(build.time_h)} now (estimates).`
      : null;
  useSaid(gained);
  return (
    <>
      {gained !== null && (
        <p className="hint step-done" data-testid="suggestion-done">
          {gained}
        </p>
      )}
      {suggestion && (
        <div className="step-suggestion" data-testid="suggestion">
          <p className="hint">{worstText(suggestion.worst)}.</p>
          <button
            type="button"
            className="button"
            data-testid="suggestion-use"
            onClick={() => {
              edit.press(wholeFieldWords(suggestion.worst), () => suggestion.candidate);
              setDone({ layout: suggestion.candidate, before_h: build.time_h });
            }}
          >
            {wholeFieldWords(suggestion.worst)}
          </button>
          <p className="hint" data-testid="suggestion-figures">
            {figures(build.time_h, suggestion.found)}
          </p>
        </div>
      )}
    </>
  );
}
