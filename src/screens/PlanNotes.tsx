/**
 * What lies over the plan: one line at the first visit, three actions over an empty plate.
 */
import { useBench, useWorkbench } from '../canvas/bench';
import { useCommand } from '../panels/useCommands';

/** One line that can be dismissed. */
export function FirstRun() {
  const bench = useWorkbench();
  const dismissed = useBench((state) => state.view.firstRunDismissed);
  if (dismissed) return null;
  return (
    <p className="first-run">
      This is a demo plate. Drag a part or a zone line and watch the lasers at the right; open your own
      outlines from the file menu.
      <button
        type="button"
        className="button"
        data-testid="first-run-dismiss"
        onClick={() => bench.setView({ firstRunDismissed: true })}
      >
        Understood
      </button>
    </p>
  );
}

export function EmptyPlate() {
  const empty = useBench((state) => state.layout.parts.length === 0 && state.view.tool === 'select');
  const outlines = useCommand('open-outlines');
  const draw = useCommand('tool-rectangle');
  const demo = useCommand('open-demo');
  if (!empty) return null;
  return (
    <div className="empty-plate" data-testid="empty-plate">
      <p>The plate is empty.</p>
      <div className="row">
        <button type="button" className="button" data-main onClick={outlines.run}>
          Open outlines
        </button>
        <button type="button" className="button" onClick={draw.run}>
          Draw a part
        </button>
        <button type="button" className="button" onClick={demo.run}>
          Open the demo plate
        </button>
      </div>
    </div>
  );
}
