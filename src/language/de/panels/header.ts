/** German of the panels: header. */
export const PANELS_HEADER = {
  Link: 'Link',
  'name of the layout': 'Name des Layouts',
  'Rule for shared load': 'Regel für gemeinsame Last',
};
