/** German of the commands: clipboard. */
export const COMMANDS_CLIPBOARD = {
  Cut: 'Ausschneiden',
  Paste: 'Einfügen',
  'Paste a table of parts …': 'Teiletabelle einfügen …',
  'Paste in place': 'An Ort und Stelle einfügen',
};
