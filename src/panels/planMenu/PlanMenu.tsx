/**
 * The menu over the plan, made from the list of commands; loaded when it is first asked for. It stands beside the place
 * that was asked about, so that letting the button go chooses nothing.
 */
import { labelOf } from '../../commands/labels';
import { t } from '../../language/index';
import { DropdownMenu } from 'radix-ui';
import { Fragment } from 'react';
import type { PlanMenuProps } from '../../canvas/Plan';
import { keyText, useCommand } from '../useCommands';
import { isPerLaser, MENUS, type Block, type Group } from './entries';
import '../header/header.css';

function Entry({ id }: { readonly id: string }) {
  const { command, enabled, run } = useCommand(id);
  const [key] = command.keys;
  if (!enabled && isPerLaser(id)) return null;
  return (
    <DropdownMenu.Item
      className="menu-item"
      disabled={!enabled}
      data-testid={`plan-menu-${id}`}
      onSelect={() => run()}
    >
      {labelOf(command)}
      {key !== undefined && <span className="key">{keyText(key)}</span>}
    </DropdownMenu.Item>
  );
}

function Entries({ title, ids }: Group) {
  const entries = ids.map((id) => <Entry key={id} id={id} />);
  if (title === null) return entries;
  return (
    <DropdownMenu.Sub>
      <DropdownMenu.SubTrigger className="menu-item" data-testid={`plan-menu-${title}`}>
        {t(title)}
        <span className="key">▸</span>
      </DropdownMenu.SubTrigger>
      <DropdownMenu.Portal>
        <DropdownMenu.SubContent className="menu" sideOffset={-1} alignOffset={-5} collisionPadding={8}>
          {entries}
        </DropdownMenu.SubContent>
      </DropdownMenu.Portal>
    </DropdownMenu.Sub>
  );
}

const Blocks = ({ blocks }: { readonly blocks: readonly Block[] }) =>
  blocks.map((block, i) => (
    <Fragment key={block[0]?.ids[0]}>
      {i > 0 && <DropdownMenu.Separator className="menu-line" />}
      {block.map((group) => (
        <Entries key={group.title ?? group.ids[0]} {...group} />
      ))}
    </Fragment>
  ));

export default function PlanMenu({ asked, onClose, onGone }: PlanMenuProps) {
  const { left, top } = asked.client;
  return (
    <DropdownMenu.Root open modal={false} onOpenChange={(open) => !open && onClose()}>
      <DropdownMenu.Trigger asChild>
        <span aria-hidden style={{ position: 'fixed', left, top }} />
      </DropdownMenu.Trigger>
      {/* A press elsewhere closes the menu and does nothing else; the page stays readable meanwhile, unlike behind a modal one. */}
      <div className="menu-ground" onContextMenu={(event) => event.preventDefault()} />
      <DropdownMenu.Portal>
        <DropdownMenu.Content
          className="menu"
          data-testid="plan-menu"
          aria-label={t('Commands for what was clicked')}
          side="right"
          align="start"
          sideOffset={2}
          collisionPadding={8}
          onCloseAutoFocus={(event) => {
            event.preventDefault();
            onGone();
          }}
          onContextMenu={(event) => event.preventDefault()}
        >
          <Blocks blocks={MENUS[asked.about]} />
        </DropdownMenu.Content>
      </DropdownMenu.Portal>
    </DropdownMenu.Root>
  );
}
