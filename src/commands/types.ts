/**
 * One user action = one command = one file. Keyboard, buttons, help and tests read the one list in index.ts.
 */
import type { Text, Values } from '../language/index';
import type { AnyLinked } from '../link/index';
import type { Workbench } from '../store/types';

/** What a command needs from the world around it; the page passes real ones, tests pass fakes. */
export interface Ports {
  /** Asks for a file; null where the user cancelled. */
  pickFile(accept: string): Promise<File | null>;
  download(name: string, content: string | Uint8Array, mime: string): void;
  /** Puts text into the system's clipboard; false where the browser refuses. */
  writeClipboard(text: string): Promise<boolean>;
  /** Asks for the text in the system's clipboard; null where the browser refuses. */
  readClipboard(): Promise<string | null>;
  /** Hands an opened outline or mesh file to its check page; where one is open, the file waits for its turn. */
  showImport(file: File): void;
  /** Opens the screen that holds layouts side by side, on those of a link. */
  showComparison(linked: AnyLinked): void;
  /** Opens the check page of a table of parts, on a text that may be empty. */
  showTable(text: string): void;
  /** Opens one of the page's own dialogs. */
  showDialog(
    dialog:
      | 'help'
      | 'palette'
      | 'copies'
      | 'library'
      | 'compare'
      | 'link'
      | 'divisions'
      | 'handOver'
      | 'sheet'
      | 'machine'
      | 'process'
      | 'calendar'
      | 'revision'
      | 'about',
  ): void;
}
export interface Context {
  readonly bench: Workbench;
  readonly ports: Ports;
}
/** Whether a command applies here and now; `lack` says in a few words why it does not. */
export interface When {
  (context: Context): boolean;
  lack?(context: Context): string;
}
export type CommandGroup = 'file' | 'edit' | 'part' | 'draw' | 'division' | 'view' | 'help';
export interface Command {
  /** Stable, kebab-case. */
  readonly id: string;
  readonly label: Text;
  /** What stands in the braces of the label. */
  readonly labelValues?: Values;
  readonly group: CommandGroup;
  /** Keys as "Ctrl+Z", "Shift+ArrowLeft", "q"; Ctrl stands for Cmd on a Mac. */
  readonly keys: readonly string[];
  /** A held key is one gesture (arrow keys). */
  readonly repeats?: boolean;
  /** A held key runs it again and again, each time on its own (undo, zoom). */
  readonly whileHeld?: boolean;
  /** Its keys are left to the browser, which answers them by an event that the page listens to (copy, paste). */
  readonly native?: boolean;
  readonly when: When;
  run(context: Context): void | Promise<void>;
}
