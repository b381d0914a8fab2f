/** German of the panels: spoken. */
export const PANELS_SPOKEN = {
  'Parts and zones of the plan': 'Teile und Zonen der Draufsicht',
  Zones: 'Zonen',
};
