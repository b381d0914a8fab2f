/**
 * Offers the whole field over the range of height that wastes most, with the hours it takes; once it is done, the hours
 * before and now stand there until the plate changes. Hours are estimates.
 */
import { t } from '../../language/index';
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
    ? t('Whole field from {from} mm on', { from: formatField(from_mm) })
    : t('Whole field from {from} to {to} mm', { from: formatField(from_mm), to: formatField(to_mm) });

function figures(now_h: Hours, found: Found | null): string {
  if (found === null) return t('{now} now (estimate)', { now: formatHours(now_h) });
  const { time_h, cutParts } = found;
  const cuts =
    cutParts === 0 ? t('no part') : cutParts === 1 ? t('1 part') : t('up to {cutParts} parts', { cutParts });
  return t('{now} now, {time} with it, {cuts} cut there (estimates)', {
    now: formatHours(now_h),
    time: formatHours(time_h),
    cuts,
  });
}

export function StepSuggestion() {
  const edit = useEdit();
  const analysis = useAnalysisLater();
  const suggestion = useSuggestion(analysis);
  const [done, setDone] = useState<Done | null>(null);
  const { layout, build, whole } = analysis;
  const gained =
    done?.layout === layout && whole === 'present'
      ? t('{before} before, {time} now (estimates).', {
          before: formatHours(done.before_h),
          time: formatHours(build.time_h),
        })
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
