/** German of the panels: division. */
export const PANELS_DIVISION = {
  '90°: side by side in x; 0°: front to back in y': '90°: nebeneinander in x; 0°: hintereinander in y',
  'Above the platform; a change begins with a layer':
    'Über der Bauplattform; ein Wechsel beginnt mit einer Schicht',
  'crossing x': 'Kreuzung x',
  'crossing y': 'Kreuzung y',
  'Cut the widest': 'Breitesten teilen',
  'Draw more zones in the plan with the zone tool. Where zones overlap, their lasers share. A corner that neighbours have in common moves for all of them.':
    'Weitere Zonen mit dem Zonenwerkzeug in der Draufsicht zeichnen. Wo Zonen überlappen, teilen sich ihre Laser die Last. Eine Ecke, die Nachbarn gemeinsam haben, wandert für alle.',
  'Every laser may expose everything it reaches.': 'Jeder Laser darf alles belichten, was er erreicht.',
  'Merge the narrowest': 'Schmalsten auflösen',
  rule: 'Regel',
  'shared band': 'gemeinsames Band',
  'SHARED LOAD': 'GEMEINSAME LAST',
  'strips run along': 'Streifen verlaufen bei',
  'strips, equal widths': 'Streifen, gleich breit',
  'The strip that either of two neighbours may take; its load counts once.':
    'Der Streifen, den jeder von zwei Nachbarn nehmen darf; seine Last zählt einmal.',
  'The zones are the same at every height; go to a height to change them from there on.':
    'Die Zonen sind auf jeder Höhe gleich; auf eine Höhe gehen, um sie von dort an zu ändern.',
  'Width of the shared band': 'Breite des gemeinsamen Bands',
  'ZONES OVER HEIGHT': 'ZONEN ÜBER DER HÖHE',
};
