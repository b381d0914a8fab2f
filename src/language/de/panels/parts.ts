/** German of the panels: parts. */
export const PANELS_PARTS = {
  'About the middle of their common box.': 'Um die Mitte ihrer gemeinsamen Hülle.',
  'Blocks hand-over.': 'Hindert die Übergabe.',
  'by dx': 'um dx',
  'by dy': 'um dy',
  'Find id, shape, laser, locked …': 'Suchen: Nr, Form, Laser, gesperrt …',
  'Find parts; Enter selects all that are found': 'Teile suchen; Eingabe wählt alle gefundenen',
  'Locked; a press unlocks it': 'Gesperrt; ein Druck entsperrt',
  'No part holds these words.': 'Kein Teil enthält diese Wörter.',
  'no seams': 'ohne Naht',
  Problems: 'Probleme',
  SHAPES: 'FORMEN',
  'turn together by': 'gemeinsam drehen um',
  'Words that all have to be in a row: id, shape, laser, locked, hidden, pinned, problem. Enter selects all found.':
    'Wörter, die alle in einer Zeile stehen müssen: Nr, Form, Laser, gesperrt, ausgeblendet, fest, Problem. Eingabe wählt alle gefundenen.',
};
