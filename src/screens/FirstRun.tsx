/**
 * One line at the first visit that can be dismissed.
 */
import { t } from '../language/index';
import { useBench, useWorkbench } from '../canvas/bench';

export function FirstRun() {
  const bench = useWorkbench();
  const dismissed = useBench((state) => state.view.firstRunDismissed);
  if (dismissed) return null;
  return (
    <p className="first-run">
      <span>
        {t(
          'Drag a part or a zone line and watch the lasers at the right; open your own outlines from the file menu.',
        )}
      </span>
      <button
        type="button"
        className="button"
        data-testid="first-run-dismiss"
        onClick={() => bench.setView({ firstRunDismissed: true })}
      >
        {t('Understood')}
      </button>
    </p>
  );
}
