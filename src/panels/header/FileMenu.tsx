/**
 * The file menu; loaded when it is first opened.
 */
import { labelOf } from '../../commands/labels';
import { t } from '../../language/index';
import { DropdownMenu } from 'radix-ui';
import { keyText, useCommand } from '../useCommands';

const FILE = [
  'open-layout',
  'open-outlines',
  'save-layout',
  'copy-link',
  'sheet',
  'hand-over',
  'library',
  'side-by-side',
  'all-divisions',
] as const;
const PLATES = ['new-plate', 'open-demo'] as const;
const PAGES = ['machine', 'process', 'calendar', 'revision', 'about'] as const;

function Item({ id }: { readonly id: string }) {
  const { command, enabled, run } = useCommand(id);
  return (
    <DropdownMenu.Item
      className="menu-item"
      disabled={!enabled}
      data-testid={`menu-${id}`}
      onSelect={() => run()}
    >
      {labelOf(command)}
      {command.keys[0] !== undefined && <span className="key">{keyText(command.keys[0])}</span>}
    </DropdownMenu.Item>
  );
}

export default function FileMenu() {
  return (
    <DropdownMenu.Root defaultOpen modal={false}>
      <DropdownMenu.Trigger className="button" data-testid="file-menu">
        {t('File')}
      </DropdownMenu.Trigger>
      <DropdownMenu.Portal>
        <DropdownMenu.Content className="menu" align="end" sideOffset={4} collisionPadding={8}>
          {FILE.map((id) => (
            <Item key={id} id={id} />
          ))}
          <DropdownMenu.Separator className="menu-line" />
          {PLATES.map((id) => (
            <Item key={id} id={id} />
          ))}
          <DropdownMenu.Separator className="menu-line" />
          {PAGES.map((id) => (
            <Item key={id} id={id} />
          ))}
        </DropdownMenu.Content>
      </DropdownMenu.Portal>
    </DropdownMenu.Root>
  );
}
