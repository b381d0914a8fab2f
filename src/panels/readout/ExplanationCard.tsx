/**
 * The explanation of one figure, with the layout's own numbers in the formula; loaded with the first one. It stands
 * beside the readout, over the plan's edge, level with its row, so that no row is covered. Escape puts it away until
 * another figure is asked about.
 */
import { t } from '../../language/index';
import { Popover } from 'radix-ui';
import { useMemo } from 'react';
import { useStore } from 'zustand';
import { useLayer } from '../useLayer';
import { explain } from './explain';
import type { Explained } from './explained';
import { EXPLANATION_ID, useExplained } from './explained';
import type { Table } from './sumTable';
import './explain.css';

const stay = (event: Event): void => event.preventDefault();

function SumRows({ rows, total }: Table) {
  return (
    <table>
      <tbody>
        {rows.map(({ label, value }) => (
          <tr key={label}>
            <td>{label}</td>
            <td>{value}</td>
          </tr>
        ))}
      </tbody>
      {total !== null && (
        <tfoot>
          <tr>
            <td>{total.label}</td>
            <td data-testid="explained-total">{total.value}</td>
          </tr>
        </tfoot>
      )}
    </table>
  );
}

function Said({ name }: { readonly name: Explained['name'] }) {
  const { analysis, figures } = useLayer();
  const said = explain(name, analysis, figures);
  if (said === null) return <p>{t('Nothing on the plate at this height.')}</p>;
  return (
    <>
      <h3>{said.title}</h3>
      <p>{said.meaning}</p>
      <p className="formula">{said.formula}</p>
      {said.numbers.map((line) => (
        <p key={line}>{line}</p>
      ))}
      {said.table !== undefined && <SumRows {...said.table} />}
    </>
  );
}

/** The height of the figure's row at the left edge of the column it stands in. */
function besideColumn(anchor: HTMLElement): { getBoundingClientRect(): DOMRect } {
  return {
    getBoundingClientRect: () => {
      const row = anchor.getBoundingClientRect();
      const column = anchor.closest('.readout')?.getBoundingClientRect() ?? row;
      return new DOMRect(column.left, row.top, 0, row.height);
    },
  };
}

export default function ExplanationCard() {
  const store = useExplained();
  const at = useStore(store, (state) => state.at);
  const anchor = useMemo(() => ({ current: at === null ? null : besideColumn(at.anchor) }), [at]);
  if (at === null || anchor.current === null) return null;
  return (
    <Popover.Root open onOpenChange={(open) => !open && store.setState({ at: null })}>
      <Popover.Anchor virtualRef={{ current: anchor.current }} />
      <Popover.Portal>
        <Popover.Content
          key={at.name}
          id={EXPLANATION_ID}
          role="tooltip"
          className="explain"
          side="left"
          sideOffset={0}
          collisionPadding={8}
          onOpenAutoFocus={stay}
          onCloseAutoFocus={stay}
          onFocusOutside={stay}
          onPointerDownOutside={stay}
        >
          <Said name={at.name} />
        </Popover.Content>
      </Popover.Portal>
    </Popover.Root>
  );
}
