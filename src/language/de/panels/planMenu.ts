/** German of the panels: plan menu. */
export const PANELS_PLAN_MENU = {
  'Commands for what was clicked': 'Befehle für das Angeklickte',
};
