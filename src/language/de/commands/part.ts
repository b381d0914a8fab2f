/** German of the commands: part. */
export const COMMANDS_PART = {
  'Lock or unlock': 'Sperren oder entsperren',
  'Move {step} mm to the back': '{step} mm nach hinten',
  'Move {step} mm to the front': '{step} mm nach vorn',
  'Move {step} mm to the left': '{step} mm nach links',
  'Move {step} mm to the right': '{step} mm nach rechts',
  'no part is an outline only': 'kein Teil ist nur Umriss',
  'Outline only, or whole': 'Nur Umriss oder ganz',
  'Pin to laser {number}': 'Fest zu Laser {number}',
  'Pin to no laser': 'Feste Zuweisung aufheben',
  'Show every part whole': 'Jedes Teil ganz zeigen',
  'Turn {by}° clockwise': '{by}° im Uhrzeigersinn drehen',
  'Turn {by}° counter-clockwise': '{by}° gegen den Uhrzeigersinn drehen',
};
