/** German of the messages' texts and advice. */
export const MESSAGES = {};
