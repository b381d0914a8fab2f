/** A workbench on the demo plate with ports that only write down what they were asked. */
import { analyse } from '../../src/build/analyse';
import { demoLayout } from '../../src/layout/demo';
import type { Layout } from '../../src/layout/types';
import type { AnyLinked } from '../../src/link';
import type { KeyEvent } from '../../src/commands/keyboard';
import type { Context } from '../../src/commands/types';
import { createWorkbench } from '../../src/store/workbench';

export interface Asked {
  readonly downloads: {
    readonly name: string;
    readonly content: string | Uint8Array;
    readonly mime: string;
  }[];
  readonly imports: string[];
  readonly dialogs: string[];
  readonly accepts: string[];
  /** What was put into the clipboard; its last text is what can be read from there. */
  readonly clipboard: string[];
  readonly comparisons: AnyLinked[];
  readonly tables: string[];
}

/** `file`: what the file dialog gives back, null where the user cancels it. */
export function workplace(layout: Layout = demoLayout(), file: File | null = null) {
  const bench = createWorkbench({ layout, analyse });
  const asked: Asked = {
    downloads: [],
    imports: [],
    dialogs: [],
    accepts: [],
    clipboard: [],
    comparisons: [],
    tables: [],
  };
  const context: Context = {
    bench,
    ports: {
      pickFile: async (accept) => {
        asked.accepts.push(accept);
        return file;
      },
      download: (name, content, mime) => void asked.downloads.push({ name, content, mime }),
      writeClipboard: async (text) => asked.clipboard.push(text) > 0,
      readClipboard: async () => asked.clipboard.at(-1) ?? null,
      showImport: (chosen) => void asked.imports.push(chosen.name),
      showComparison: (linked) => void asked.comparisons.push(linked),
      showTable: (text) => void asked.tables.push(text),
      showDialog: (dialog) => void asked.dialogs.push(dialog),
    },
  };
  return { bench, context, asked, layout: () => bench.store.getState().layout };
}

/** "Ctrl+Shift+Z" as the browser reports it. */
export function keyEvent(chord: string, more: Partial<KeyEvent> = {}): KeyEvent {
  const words = chord.split('+').filter((word) => word !== '');
  const last = chord.endsWith('+') ? '+' : words.at(-1)!;
  const has = (word: string) => words.slice(0, -1).includes(word);
  const shiftKey = has('Shift');
  const key = last.length === 1 && !shiftKey ? last.toLowerCase() : last;
  return { key, ctrlKey: has('Ctrl'), metaKey: false, shiftKey, altKey: has('Alt'), ...more };
}

/** Selects the first `count` parts; their ids. */
export function chosen(place: ReturnType<typeof workplace>, count = 1): string[] {
  const selection = place
    .layout()
    .parts.slice(0, count)
    .map((part) => part.id);
  place.bench.setView({ selection });
  return selection;
}
