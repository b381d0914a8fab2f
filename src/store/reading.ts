/**
 * What a saved layout is read with. It stands apart because a first visit has nothing to read and need not load it.
 */
export { messageText } from '../layout/messages';
export { readLayout, readLayoutValue } from '../layout/read';
