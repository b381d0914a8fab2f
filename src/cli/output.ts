/**
 * What every command of the terminal has in common: it ends with an exit code and one text. 0: the report goes to
 * standard output; 2: one line with what was found, where and what is accepted goes to standard error.
 */
import { messageAdvice, messageText } from '../layout/messages';
import type { Fault, Result } from '../layout/result';

export const EXIT_OK = 0;
const EXIT_BAD_INPUT = 2;

export interface Outcome {
  readonly exitCode: number;
  readonly text: string;
}

const oneLine = (text: string): string => text.replace(/[\s\u2028\u2029]+/gu, ' ').trim();

/** A refusal in one line; `where` names the file it is about. */
export function refusal({ code, params }: Fault, where = ''): Outcome {
  const sentence = `${messageText(code, params)} ${messageAdvice(code, params)}`;
  return {
    exitCode: EXIT_BAD_INPUT,
    text: `${oneLine(where === '' ? sentence : `${where}: ${sentence}`)}\n`,
  };
}

/** The value as JSON, or the refusal. */
export const outcome = (result: Result<unknown>, where = ''): Outcome =>
  result.ok
    ? { exitCode: EXIT_OK, text: `${JSON.stringify(result.value, null, 2)}\n` }
    : refusal(result.fault, where);
