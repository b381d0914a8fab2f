/** German of the panels: process. */
export const PANELS_PROCESS = {
  EXPOSURE: 'BELICHTUNG',
  LIMITS: 'GRENZEN',
  NOTE: 'NOTIZ',
  'note of the layout': 'Notiz des Layouts',
  POWDER: 'PULVER',
  'vectors by': 'Vektoren nach',
};
