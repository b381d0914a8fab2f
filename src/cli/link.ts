/** `link -- FILE`: the part after "#" of the link that holds a layout file. */
import { readLayout } from '../layout/read';
import { encodeLink } from '../link/index';
import { readText } from './analyse';
import { oneWord } from './oneWord';
import { EXIT_OK, refusal, type Outcome } from './output';

/** The whole command, from its arguments to its exit code and text. */
export function linkCommand(given: readonly string[]): Outcome {
  const file = oneWord(given, 'file', 'link-usage');
  if (!file.ok) return refusal(file.fault);
  const text = readText(file.value);
  if (!text.ok) return refusal(text.fault, file.value);
  const layout = readLayout(text.value);
  if (!layout.ok) return refusal(layout.fault, file.value);
  return { exitCode: EXIT_OK, text: `${encodeLink(layout.value)}\n` };
}
