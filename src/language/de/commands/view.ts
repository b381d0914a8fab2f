/** German of the commands: view. */
export const COMMANDS_VIEW = {
  'Fit the platform; again: parts off it too': 'Bauplattform einpassen; noch einmal: auch Teile daneben',
  'Ground: light, dark, as the system': 'Hintergrund: hell, dunkel, wie das System',
  'Height to the next stretch': 'Höhe zum nächsten Bereich',
  'Height to the stretch below': 'Höhe zum Bereich darunter',
  'Language: as the system': 'Sprache: wie das System',
  'Language: English': 'Sprache: Englisch (English)',
  'Language: German (Deutsch)': 'Sprache: Deutsch',
  'no stretch above': 'kein Bereich darüber',
  'no stretch below': 'kein Bereich darunter',
  'Snapping on or off': 'Fang ein oder aus',
  'the plan is not drawn yet': 'die Draufsicht ist noch nicht gezeichnet',
  'the platform fits already': 'die Bauplattform ist schon eingepasst',
  'Wheel: zoom, or move the view': 'Mausrad: Zoom oder Ansicht verschieben',
  'Zoom in': 'Vergrößern',
  'Zoom out': 'Verkleinern',
};
