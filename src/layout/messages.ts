/**
 * Every message a user reads, under a stable code. `text` says what was found and where, `advice` what is accepted or
 * what to do; words in braces come from the fault's params. `blocks`: hand-over waits until it is resolved.
 */
export interface Message {
  readonly text: string;
  readonly advice: string;
  readonly blocks: boolean;
}

export const MESSAGES = {
  // problems of a well-formed layout (it opens and lists them)
  'part-off-platform': {
    text: '{part} stands off the platform by {area} mm².',
    advice: 'Move it inside the platform outline.',
    blocks: true,
  },
} as const satisfies Record<string, Message>;

export type MessageCode = keyof typeof MESSAGES;

const fill = (template: string, params: Readonly<Record<string, string | number>>): string =>
  template.replace(/\{(\w+)\}/g, (_, key: string) => String(params[key] ?? '?'));

/** One sentence for a fault or problem. */
export const messageText = (code: MessageCode, params: Readonly<Record<string, string | number>>): string =>
  fill(MESSAGES[code].text, params);
/** What the reader can do about it. */
export const messageAdvice = (code: MessageCode, params: Readonly<Record<string, string | number>>): string =>
  fill(MESSAGES[code].advice, params);
