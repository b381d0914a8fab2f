/**
 * `layout -- LINK`: the layout file that a link holds. LINK is a whole address or the part after "#"; "-" reads it from
 * standard input, for links that are longer than an argument may be.
 */
import { readFileSync } from 'node:fs';
import { writeLayout } from '../layout/write';
import { fail, ok, type Result } from '../layout/result';
import { decodeLink } from '../link/index';
import { oneWord } from './oneWord';
import { EXIT_OK, refusal, type Outcome } from './output';

const STANDARD_INPUT = 0;
const FROM_INPUT = '-';

function fromInput(): Result<string> {
  try {
    return ok(readFileSync(STANDARD_INPUT, 'utf8'));
  } catch {
    return fail('layout-usage', { detail: 'standard input cannot be read' });
  }
}

/** The whole command, from its arguments to its exit code and text. */
export function layoutCommand(given: readonly string[], input: () => Result<string> = fromInput): Outcome {
  const word = oneWord(given, 'link', 'layout-usage');
  if (!word.ok) return refusal(word.fault);
  const text = word.value === FROM_INPUT ? input() : word;
  if (!text.ok) return refusal(text.fault);
  const linked = decodeLink(text.value);
  return linked.ok ? { exitCode: EXIT_OK, text: writeLayout(linked.value.layout) } : refusal(linked.fault);
}
