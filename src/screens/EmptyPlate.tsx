/**
 * Three actions over a plate without parts.
 */
import { t } from '../language/index';
import { useBench } from '../canvas/bench';
import { useCommand } from '../panels/useCommands';
import './overlays.css';

export function EmptyPlate() {
  const empty = useBench((state) => state.layout.parts.length === 0 && state.view.tool === 'select');
  const outlines = useCommand('open-outlines');
  const draw = useCommand('tool-rectangle');
  const demo = useCommand('open-demo');
  if (!empty) return null;
  return (
    <div className="empty-plate" data-testid="empty-plate">
      <p>{t('The plate is empty.')}</p>
      <div className="row">
        <button type="button" className="button" data-main onClick={outlines.run}>
          {t('Open outlines or a mesh')}
        </button>
        <button type="button" className="button" onClick={draw.run}>
          {t('Draw a part')}
        </button>
        <button type="button" className="button" onClick={demo.run}>
          {t('Open the demo plate')}
        </button>
      </div>
    </div>
  );
}
