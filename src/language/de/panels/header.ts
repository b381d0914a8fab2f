/** German of the panels: header. */
export const PANELS_HEADER = {
  'as the system': 'wie das System',
  Balanced: 'Ausgeglichen',
  GROUND: 'HINTERGRUND',
  'Ground, language, wheel': 'Hintergrund, Sprache, Mausrad',
  LANGUAGE: 'SPRACHE',
  Link: 'Link',
  'moves the view': 'verschiebt die Ansicht',
  'name of the layout': 'Name des Layouts',
  'No revision yet': 'Noch keine Revision',
  'Redo: {redo}': 'Wiederherstellen: {redo}',
  'Revision {name}, {state}': 'Revision {name}, {state}',
  'Rule for shared load': 'Regel für gemeinsame Last',
  'Undo: {undo}': 'Rückgängig: {undo}',
  WHEEL: 'MAUSRAD',
  zooms: 'Zoom',
};
