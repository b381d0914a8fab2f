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
          ? t('Part {part}; the original counts as the first.', { part: ids[0]! })
          : t('{count} parts; the original counts as the first.', { count: ids.length })}
      </p>
      <RowsForm ids={ids} onDone={onClose} />
    </Sheet>
  );
}
