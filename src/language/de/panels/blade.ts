/** German of the panels: blade. */
export const PANELS_BLADE = {
  'A straight blade and sections as drawn; stroke, angle and lengths are common practice without a source. The machine maker’s instructions decide.':
    'Eine gerade Klinge und Schnitte wie gezeichnet; Hub, Winkel und Längen sind übliche Praxis ohne Quelle. Es entscheiden die Anweisungen des Maschinenherstellers.',
  'along the stroke from the centre, mm →': 'entlang des Hubs ab der Mitte, mm →',
  'geometry only': 'reine Geometrie',
  'Length met by the blade along its stroke': 'Von der Klinge getroffene Länge entlang des Hubs',
  'met, mm': 'getroffen, mm',
  'The blade meets nothing: the plate is empty.': 'Die Klinge trifft nichts: die Platte ist leer.',
  'The blade over the whole build': 'Die Klinge über den ganzen Baujob',
};
