/**
 * What a schema accepts, in words. The schema library carries a message as one string, so the words go through it as JSON
 * and come out again as words that are said in the language in force.
 */
import type { Text } from '../language/index';
import type { Param, Words } from './result';

/** Words as a message of the schema library. */
export const accepts = (text: Text, values: NonNullable<Words['values']> = {}): string =>
  JSON.stringify({ text, values } satisfies Words);

/** What the library's message says; its own messages stay as they are. */
export function acceptedIn(message: string): Param {
  return message.startsWith('{"text":') ? (JSON.parse(message) as Words) : message;
}
