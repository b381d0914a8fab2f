/** German of the commands: arrange. */
export const COMMANDS_ARRANGE = {
  'Align centres, one behind the other': 'Mitten hintereinander ausrichten',
  'Align centres, side by side': 'Mitten nebeneinander ausrichten',
  'Align front edges': 'Vordere Kanten ausrichten',
  'Align left edges': 'Linke Kanten ausrichten',
  'Align rear edges': 'Hintere Kanten ausrichten',
  'Align right edges': 'Rechte Kanten ausrichten',
  'Centres evenly in x': 'Mitten gleichmäßig in x',
  'Centres evenly in y': 'Mitten gleichmäßig in y',
  'Equal gaps in x': 'Gleiche Abstände in x',
  'Equal gaps in y': 'Gleiche Abstände in y',
  'fewer than three parts are selected': 'weniger als drei Teile sind ausgewählt',
  'fewer than two parts are selected': 'weniger als zwei Teile sind ausgewählt',
  'Mirror places front to back': 'Plätze vorn und hinten spiegeln',
  'Mirror places left to right': 'Plätze links und rechts spiegeln',
  'Spread, one per laser': 'Verteilen, eines je Laser',
  '{named} and {number} more': '{named} und {number} weitere',
};
