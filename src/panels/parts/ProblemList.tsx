/**
 * What is wrong with the plate and what to do about it. A click selects the parts concerned and brings them into sight; with nothing wrong the
 * list says how many checks it stands for, and before the present plate was looked at that it is being
 * checked, without a number.
 */
import { t } from '../../language/index';
import { useAnalysisLater, useWorkbench } from '../../canvas/bench';
import { bringPartsIntoView } from '../../canvas/intoView';
import type { Problem } from '../../build/types';
import { messageAdvice, messageText } from '../../layout/messages';
import { useLightHandlers, useLit } from '../useLight';

function ProblemRow({ problem, index }: { readonly problem: Problem; readonly index: number }) {
  const bench = useWorkbench();
  const light = useLightHandlers(`problem:${index}`);
  const lit = useLit(`problem:${index}`);
  return (
    <li>
      <button
        type="button"
        className="problem"
        data-lit={lit || undefined}
        data-code={problem.code}
        onClick={() => {
          bench.setView({ selection: problem.parts });
          bringPartsIntoView(bench, problem.parts);
        }}
        {...light}
      >
        <b className="problem-mark">{index + 1}</b>
        <span>
          {messageText(problem.code, problem.params)} {messageAdvice(problem.code, problem.params)}
          {problem.blocks && <em> {t('Blocks hand-over.')}</em>}
        </span>
      </button>
    </li>
  );
}

export function ProblemList() {
  const { problems, checks, whole } = useAnalysisLater();
  const none =
    whole === 'present' && checks > 0
      ? t('No problems found ({checks} checks).', { checks })
      : t('Checking …');
  return (
    <section className="problems" aria-label={t('Problems')} data-testid="problems">
      <h2 className="block-title">
        {t('PROBLEMS')}{' '}
        <span data-testid="problem-count">{checks > 0 ? problems.length : t('checking …')}</span>
      </h2>
      {problems.length === 0 ? (
        <p className="hint">{none}</p>
      ) : (
        <ol>
          {problems.map((problem, index) => (
            <ProblemRow key={`${index} ${problem.code}`} problem={problem} index={index} />
          ))}
        </ol>
      )}
    </section>
  );
}
