/** The arguments of commands that take one thing and nothing else: a file, a link. */
import { parseArgs } from 'node:util';
import { fail, ok, type Result } from '../layout/result';

const detailOf = (error: unknown): string => {
  const message = error instanceof Error ? error.message : 'the arguments are unreadable';
  return (message.split('. ')[0] ?? message).replace(/\.$/, '');
};

/** The one word. `what` names it; what follows "--" is taken whatever it looks like. Faults: link-usage, layout-usage. */
export function oneWord(
  given: readonly string[],
  what: string,
  usage: 'link-usage' | 'layout-usage',
): Result<string> {
  try {
    const { positionals } = parseArgs({ args: [...given], options: {}, allowPositionals: true });
    const [word] = positionals;
    if (word === undefined) return fail(usage, { detail: `no ${what} is given` });
    return positionals.length > 1
      ? fail(usage, { detail: `${positionals.length} ${what}s are given` })
      : ok(word);
  } catch (error) {
    return fail(usage, { detail: detailOf(error) });
  }
}
