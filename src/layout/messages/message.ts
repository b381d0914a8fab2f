/**
 * One message of the table. `text` says what was found and where, `advice` what is accepted or what to do; words in
 * braces come from the fault's params, "[edge is|edges are]" goes by the param `count`. `blocks`: hand-over waits until it
 * is resolved.
 */
import type { Text } from '../../language/index';

export interface Message {
  readonly text: Text;
  readonly advice: Text;
  readonly blocks: boolean;
}
