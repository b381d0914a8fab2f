/** German of the commands: edit. */
export const COMMANDS_EDIT = {
  'Cancel, or deselect': 'Abbrechen oder Auswahl aufheben',
  'Copies in rows …': 'Kopien in Reihen …',
  'nothing to cancel': 'nichts abzubrechen',
  'nothing to redo': 'nichts wiederherzustellen',
  'nothing to undo': 'nichts rückgängig zu machen',
  'Select all of the same shape': 'Alle gleicher Form auswählen',
  'Select all parts': 'Alle Teile auswählen',
  'Select all that laser {number} exposes in this layer':
    'Alle auswählen, die Laser {number} in dieser Schicht belichtet',
  'Select all that the same lasers expose in this layer':
    'Alle auswählen, die dieselben Laser in dieser Schicht belichten',
};
