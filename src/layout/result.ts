/**
 * Errors at a border are data. A Fault names a message of the table in messages.ts and carries the words that go
 * into it; it never holds a finished sentence, so that every language can say it.
 */
import type { MessageCode } from './messages';

export type Params = Readonly<Record<string, string | number>>;
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
