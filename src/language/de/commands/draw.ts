/** German of the commands: draw. */
export const COMMANDS_DRAW = {
  'Select and move': 'Auswählen und verschieben',
  'Shift the view': 'Ansicht verschieben',
};
