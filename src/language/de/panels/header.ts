/** German of the panels: header. */
export const PANELS_HEADER = {
  Balanced: 'Ausgeglichen',
  Link: 'Link',
  'name of the layout': 'Name des Layouts',
  'No revision yet': 'Noch keine Revision',
  'Redo: {redo}': 'Wiederherstellen: {redo}',
  'Revision {name}, {state}': 'Revision {name}, {state}',
  'Rule for shared load': 'Regel für gemeinsame Last',
  'Undo: {undo}': 'Rückgängig: {undo}',
};
