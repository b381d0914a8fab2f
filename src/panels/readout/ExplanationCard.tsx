/**
 * The explanation of one figure beside it, with the layout's own numbers in the formula; loaded with the first one.
 */
import { Popover } from 'radix-ui';
import { useStore } from 'zustand';
import { useLayer } from '../useLayer';
import { explain } from './explain';
import type { Explained } from './explained';
import { EXPLANATION_ID, useExplained } from './explained';

const stay = (event: Event): void => event.preventDefault();

function Said({ name }: { readonly name: Explained['name'] }) {
  const { analysis, figures } = useLayer();
  const said = explain(name, analysis, figures);
  if (said === null) return <p>Nothing on the plate at this height.</p>;
  return (
    <>
      <h3>{said.title}</h3>
      <p>{said.meaning}</p>
      <p className="formula">{said.formula}</p>
      {said.numbers.map((line) => (
        <p key={line}>{line}</p>
      ))}
    </>
  );
}

export default function ExplanationCard() {
  const store = useExplained();
  const at = useStore(store, (state) => state.at);
  if (at === null) return null;
  return (
    <Popover.Root open onOpenChange={(open) => !open && store.setState({ at: null })}>
      <Popover.Anchor virtualRef={{ current: at.anchor }} />
      <Popover.Portal>
        <Popover.Content
          key={at.name}
          id={EXPLANATION_ID}
          role="tooltip"
          className="explain"
          side="left"
          sideOffset={8}
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
