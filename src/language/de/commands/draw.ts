/** German of the commands: draw. */
export const COMMANDS_DRAW = {
  'it overlaps, or stands alone': 'es überlappt oder steht allein',
  Measure: 'Messen',
  'Measure to the other part selected, or to the nearest':
    'Zum anderen ausgewählten oder zum nächsten Teil messen',
  'more than two parts are selected': 'mehr als zwei Teile sind ausgewählt',
  'Select and move': 'Auswählen und verschieben',
  'Shift the view': 'Ansicht verschieben',
};
