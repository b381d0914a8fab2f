/** German of the screens: hand over. */
export const SCREENS_HAND_OVER = {
  '1,5 and semicolons between': '1,5 und Strichpunkte dazwischen',
  '1.5 and commas between': '1.5 und Kommas dazwischen',
  '1.5 and semicolons between': '1.5 und Strichpunkte dazwischen',
  'Cancel: {title}': 'Abbrechen: {title}',
  'Dropped; no file was made.': 'Abgebrochen; keine Datei wurde erstellt.',
  'Save {form}': '{form} speichern',
  'Save {form}: {title}': '{form} speichern: {title}',
  '{title}, being made': '{title}, wird erstellt',
};
