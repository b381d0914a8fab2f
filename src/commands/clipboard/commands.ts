/**
 * Cut, copy and paste by the system's clipboard. Their keys are left to the browser, whose own events carry the text
 * (events.ts); from a menu the page asks for the clipboard itself.
 */
import { isTable } from '../operations/clip';
import { always, hasSelection, viewOf } from '../make';
import type { Command, Context } from '../types';
import { copied, paste as pasteText, takeAway } from './exchange';

async function copy({ bench, ports }: Context): Promise<boolean> {
  const text = copied(bench);
  const written = text !== null && (await ports.writeClipboard(text));
  if (!written) bench.notify({ code: 'clip-not-written', params: {} });
  return written;
}

async function cut(context: Context): Promise<void> {
  const ids = viewOf(context).selection;
  if (await copy(context)) takeAway(context.bench, ids);
}

async function paste(context: Context, inPlace: boolean): Promise<void> {
  const { bench, ports } = context;
  const text = await ports.readClipboard();
  if (text === null) return bench.notify({ code: 'clip-not-read', params: {} });
  pasteText(context, text, inPlace);
}

/** Opens the check page on the table in the clipboard, or on an empty field where there is none to be had. */
async function pasteTable({ ports }: Context): Promise<void> {
  const text = (await ports.readClipboard()) ?? '';
  ports.showTable(isTable(text) ? text : '');
}

type Base = Pick<Command, 'id' | 'label' | 'keys' | 'when' | 'run'>;
const clipboardCommand = (base: Base): Command => ({ ...base, group: 'edit', native: true });

export const clipboardCommands: readonly Command[] = [
  clipboardCommand({ id: 'cut', label: 'Cut', keys: ['Ctrl+X'], when: hasSelection, run: cut }),
  clipboardCommand({
    id: 'copy',
    label: 'Copy',
    keys: ['Ctrl+C'],
    when: hasSelection,
    run: async (context) => void (await copy(context)),
  }),
  clipboardCommand({
    id: 'paste',
    label: 'Paste',
    keys: ['Ctrl+V'],
    when: always,
    run: (context) => paste(context, false),
  }),
  clipboardCommand({
    id: 'paste-in-place',
    label: 'Paste in place',
    keys: ['Ctrl+Shift+V'],
    when: always,
    run: (context) => paste(context, true),
  }),
  {
    id: 'paste-table',
    label: 'Paste a table of parts …',
    group: 'edit',
    keys: ['Shift+X'],
    when: always,
    run: pasteTable,
  },
];
