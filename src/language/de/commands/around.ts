/** German of the commands: around. */
export const COMMANDS_AROUND = {
  'no part is selected': 'kein Teil ist ausgewählt',
  'no part on the plate': 'kein Teil auf der Platte',
  'the machine has fewer lasers': 'die Maschine hat weniger Laser',
};
