/** The one link that holds the whole comparison: its layouts in their order, and the height at which they are cut. */
import { useContext, useMemo, useState } from 'react';
import { fileName } from '../../commands/file/saveLayout';
import type { AnyLinked } from '../../link/index';
import { writeLayout } from '../../layout/write';
import { CommandContext } from '../../panels/commandContext';
import { LinkText } from '../link/LinkText';
import { MOST_COLUMNS, type Columns } from './columns';

const FEWEST_COLUMNS = 2;

function Opened({ columns, height_mm }: Pick<Columns, 'columns' | 'height_mm'>) {
  const context = useContext(CommandContext)!;
  const linked = useMemo(
    (): AnyLinked => ({
      kind: 'comparison',
      layouts: columns.map(({ layout }) => layout),
      view: { height_mm },
    }),
    [columns, height_mm],
  );
  const save = (): void => {
    for (const { layout } of columns)
      context.ports.download(fileName(layout.name), writeLayout(layout), 'application/json');
  };
  return <LinkText linked={linked} file={`${columns.length} layout files`} onSave={save} />;
}

/** A button that opens the link under it; nothing while fewer than two layouts stand there. */
export function CompareLink({ columns, height_mm }: Pick<Columns, 'columns' | 'height_mm'>) {
  const [open, setOpen] = useState(false);
  if (columns.length < FEWEST_COLUMNS || columns.length > MOST_COLUMNS) return null;
  return (
    <div className="compare-link">
      <button
        type="button"
        className="button"
        aria-expanded={open}
        data-testid="compare-link"
        onClick={() => setOpen(!open)}
      >
        Link of this comparison …
      </button>
      {open && <Opened columns={columns} height_mm={height_mm} />}
    </div>
  );
}
