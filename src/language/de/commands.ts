/** German of labels of commands and why they are off. */
export const COMMANDS = {};
