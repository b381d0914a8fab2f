/** German of the panels: plan menu. */
export const PANELS_PLAN_MENU = {
  Align: 'Ausrichten',
  'Commands for what was clicked': 'Befehle für das Angeklickte',
  Distribute: 'Verteilen',
  Draw: 'Zeichnen',
  'Mirror places': 'Plätze spiegeln',
  'Select by laser': 'Nach Laser auswählen',
};
