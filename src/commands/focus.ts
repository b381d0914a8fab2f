/**
 * Whose key is it: the page's, or that of the field, widget or dialog that has the focus.
 */

/** What is read of a KeyboardEvent. */
export interface KeyEvent {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly repeat?: boolean;
  readonly isComposing?: boolean;
  readonly defaultPrevented?: boolean;
  readonly target?: unknown;
}

/** What is read of the element under the focus. */
interface Focused {
  readonly tagName?: string;
  readonly type?: string;
  readonly isContentEditable?: boolean;
  closest?(selector: string): unknown;
}

const TEXTLESS_INPUTS = ['button', 'checkbox', 'color', 'file', 'radio', 'range', 'reset', 'submit'];
/** Widgets that use arrows, Home, End and the page keys themselves. */
const STEERED =
  'select, input[type=range], input[type=radio], [role=slider], [role=radio], [role=tab], [role=option], ' +
  '[role=spinbutton], [role=separator], [role=toolbar], [role=radiogroup]';
/** Places that answer to their own keys only. */
const CLOSED = '[role=dialog], [role=alertdialog], [role=menu], [role=listbox]';
const STEERING = /^(Arrow\w+|Home|End|PageUp|PageDown| |Enter)$/;

function isTextField({ tagName, type, isContentEditable }: Focused): boolean {
  if (isContentEditable === true || tagName === 'TEXTAREA') return true;
  return tagName === 'INPUT' && !TEXTLESS_INPUTS.includes(type ?? 'text');
}

const within = (focused: Focused, selector: string): boolean => Boolean(focused.closest?.(selector));

type FocusKey = Pick<KeyEvent, 'key' | 'target'> & Partial<Pick<KeyEvent, 'ctrlKey' | 'metaKey'>>;

/** True where the focused element keeps the key for itself. */
export function keptByFocus({ key, ctrlKey, metaKey, target }: FocusKey): boolean {
  const focused: Focused = typeof target === 'object' && target !== null ? target : {};
  if (within(focused, CLOSED)) return true;
  if (isTextField(focused)) return key !== 'Escape' && !((ctrlKey || metaKey) && key.toLowerCase() === 'k');
  return STEERING.test(key) && within(focused, STEERED);
}
