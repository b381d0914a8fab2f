/**
 * Copies of the selection in rows, asked for by key or menu.
 */
import { t } from '../language/index';
import { useBench } from '../canvas/bench';
import { RowsForm } from '../panels/parts/RowsForm';
import { Sheet } from './Sheet';

export default function CopiesDialog({ onClose }: { onClose(): void }) {
  const ids = useBench((state) => state.view.selection);
  return (
    <Sheet title={t('Copies in rows')} onClose={onClose}>
      <p className="hint">
        {ids.length === 1
          ? t('Part {number}', { number: ids[0] })
          : t('{count} parts', { count: ids.length })}
        ; the original counts as the first.
      </p>
      <RowsForm ids={ids} onDone={onClose} />
    </Sheet>
  );
}
