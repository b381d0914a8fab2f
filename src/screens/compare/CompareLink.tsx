/**
 * The one link that holds the whole comparison: its layouts, and the height at which they are cut. The reference comes first, as
 * a reader's page counts differences from the first one; the others keep their order.
 */
import { t } from '../../language/index';
import { useContext, useMemo, useState } from 'react';
import { saveFile } from '../../commands/file/saveLayout';
import type { AnyLinked } from '../../link/index';
import { CommandContext } from '../../panels/commandContext';
import { LinkText } from '../link/LinkText';
import { MOST_COLUMNS, type Columns } from './columns';

const FEWEST_COLUMNS = 2;

function Opened({ columns, reference, height_mm }: Columns) {
  const context = useContext(CommandContext)!;
  const linked = useMemo(
    (): AnyLinked => ({
      kind: 'comparison',
      layouts: [
        ...columns.filter(({ key }) => key === reference),
        ...columns.filter(({ key }) => key !== reference),
      ].map(({ layout }) => layout),
      view: { height_mm },
    }),
    [columns, reference, height_mm],
  );
  const save = async (): Promise<void> => {
    for (const { layout } of columns) await saveFile(context, layout);
  };
  return (
    <LinkText
      linked={linked}
      file={t('Save {count} layout files', { count: columns.length })}
      onSave={() => void save()}
    />
  );
}

/** A button that opens the link under it; nothing while fewer than two layouts stand there. */
export function CompareLink({ state }: { readonly state: Columns }) {
  const [open, setOpen] = useState(false);
  const count = state.columns.length;
  if (count < FEWEST_COLUMNS || count > MOST_COLUMNS) return null;
  return (
    <div className="compare-link">
      <button
        type="button"
        className="button"
        aria-expanded={open}
        data-testid="compare-link"
        onClick={() => setOpen(!open)}
      >
        {t('Link of this comparison …')}
      </button>
      {open && <Opened {...state} />}
    </div>
  );
}
