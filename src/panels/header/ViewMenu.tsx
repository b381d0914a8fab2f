/**
 * How the page is shown: its ground, its language, and what the wheel does on the plan. Each is one of a few; loaded when
 * the menu is first opened.
 */
import { DropdownMenu } from 'radix-ui';
import type { ReactNode } from 'react';
import { useBench, useWorkbench } from '../../canvas/bench';
import { t, type Text } from '../../language/index';
import type { View } from '../../store/types';

interface ChoiceProps<Key extends keyof View> {
  readonly of: Key;
  readonly title: Text;
  readonly options: readonly (readonly [View[Key] & string, string])[];
}

function Choice<Key extends 'theme' | 'language' | 'wheel'>({ of, title, options }: ChoiceProps<Key>) {
  const bench = useWorkbench();
  const value = useBench((state) => state.view[of]);
  return (
    <DropdownMenu.RadioGroup
      aria-label={t(title)}
      value={value}
      onValueChange={(next) => bench.setView({ [of]: next })}
    >
      <DropdownMenu.Label className="menu-title">{t(title)}</DropdownMenu.Label>
      {options.map(([option, words]) => (
        <DropdownMenu.RadioItem
          key={option}
          className="menu-item"
          value={option}
          data-testid={`${of}-${option}`}
          lang={of === 'language' && option !== 'system' ? option : undefined}
        >
          {words}
          <DropdownMenu.ItemIndicator className="key" aria-hidden="true">
            ●
          </DropdownMenu.ItemIndicator>
        </DropdownMenu.RadioItem>
      ))}
    </DropdownMenu.RadioGroup>
  );
}

export default function ViewMenu({ children }: { readonly children: ReactNode }) {
  return (
    <DropdownMenu.Root defaultOpen modal={false}>
      <DropdownMenu.Trigger
        className="button"
        aria-label={t('Ground, language, wheel')}
        title={t('Ground, language, wheel')}
        data-testid="view-menu"
      >
        {children}
      </DropdownMenu.Trigger>
      <DropdownMenu.Portal>
        <DropdownMenu.Content className="menu" align="end" sideOffset={4} collisionPadding={8}>
          <Choice
            of="theme"
            title="GROUND"
            options={[
              ['system', t('as the system')],
              ['light', t('light')],
              ['dark', t('dark')],
            ]}
          />
          <DropdownMenu.Separator className="menu-line" />
          <Choice
            of="language"
            title="LANGUAGE"
            options={[
              ['system', t('as the system')],
              ['en', 'English'],
              ['de', 'Deutsch'],
            ]}
          />
          <DropdownMenu.Separator className="menu-line" />
          <Choice
            of="wheel"
            title="WHEEL"
            options={[
              ['zoom', t('zooms')],
              ['pan', t('moves the view')],
            ]}
          />
        </DropdownMenu.Content>
      </DropdownMenu.Portal>
    </DropdownMenu.Root>
  );
}
