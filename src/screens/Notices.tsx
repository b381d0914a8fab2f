/**
 * What could not be done, one sentence each, with what is accepted; the layout is untouched. Each can be put away.
 * While a dialog is open they stand at its top instead, where they cover nothing.
 */
import { t } from '../language/index';
import { useBench, useWorkbench } from '../canvas/bench';
import { messageAdvice, messageText, paramText } from '../layout/messages';
import './overlays.css';

export function Notices({ inDialog = false }: { readonly inDialog?: boolean }) {
  const bench = useWorkbench();
  const notices = useBench((state) => state.view.notices);
  return (
    <section
      className={inDialog ? 'dialog-notices' : 'notices'}
      aria-label={t('Messages')}
      data-testid={inDialog ? 'dialog-notices' : 'notices'}
    >
      {notices.map(({ id, fault }) => (
        <div key={id} className="notice">
          <p>
            {'file' in fault.params && <b>{paramText(fault.params['file']!)}: </b>}
            {messageText(fault.code, fault.params)} {messageAdvice(fault.code, fault.params)}
          </p>
          <button
            type="button"
            className="button"
            aria-label={t('Put this message away')}
            onClick={() => bench.dismissNotice(id)}
          >
            ×
          </button>
        </div>
      ))}
    </section>
  );
}
