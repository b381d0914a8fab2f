/** German of the commands: help. */
export const COMMANDS_HELP = {
  'About and cautions': 'Über und Hinweise',
  'Calendar …': 'Kalender …',
  'Machine …': 'Maschine …',
  'Process …': 'Prozess …',
};
