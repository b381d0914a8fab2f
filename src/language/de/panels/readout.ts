/** German of the panels: readout. */
export const PANELS_READOUT = {
  Build: 'Baujob',
  'by geometry': 'nach Geometrie',
  'Mean number of plumes over each beam, by geometry only':
    'Mittlere Zahl der Rauchfahnen über jedem Strahl, reine Geometrie',
  'Nothing on the plate at this height.': 'Auf dieser Höhe steht nichts auf der Platte.',
  'Plumes over each beam, by geometry only': 'Rauchfahnen über jedem Strahl, reine Geometrie',
  'Whole parts with a choice of laser': 'Ganze Teile mit Wahl des Lasers',
};
