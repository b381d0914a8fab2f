/**
 * Errors at a border are data. A Fault names a message of the table in messages.ts and carries the words that go
 * into it; it never holds a finished sentence, so that every language can say it.
 */
import type { Text } from '../language/index';
import type { MessageCode } from './messages';
import type { Revision } from './types';

/** Words of the program inside a message; said in the language in force when the message is. */
export interface Words {
  readonly text: Text;
  readonly values?: Params;
}
/** A number in the digits it is to be read in, written with a point. */
export interface Figure {
  readonly number: string;
}
/** A state of a revision; said in words when the message is. */
export interface State {
  readonly state: Revision['state'];
}
/** What goes into a message: names, words from files and what a user typed as they are, a fault as its sentence. */
export type Param = string | number | Words | Figure | State | Fault;
export type Params = Readonly<Record<string, Param>>;
export interface Fault {
  readonly code: MessageCode;
  readonly params: Params;
}
export type Result<T> =
  { readonly ok: true; readonly value: T } | { readonly ok: false; readonly fault: Fault };

/** A value that was read or made. */
export const ok = <T>(value: T): Result<T> => ({ ok: true, value });
/** A refusal by its code, with the words that its message asks for. */
export const fail = (code: MessageCode, params: Params = {}): Result<never> => ({
  ok: false,
  fault: { code, params },
});
/** A number of which a message is to show just these digits. */
export const figure = (number: string): Figure => ({ number });
