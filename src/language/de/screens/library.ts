/** German of the screens: library. */
export const SCREENS_LIBRARY = {
  actions: 'Aktionen',
  'Export all': 'Alle exportieren',
  'Import …': 'Importieren …',
  'Keep both': 'Beide behalten',
  'Kept aside': 'Beiseitegelegt',
  'Kept in this browser only; clearing its site data removes it. A plate holds copies: changing an entry changes no plate.':
    'Nur in diesem Browser; wer seine Websitedaten löscht, löscht sie mit. Eine Platte enthält Kopien: ein geänderter Eintrag ändert keine Platte.',
  Replace: 'Ersetzen',
  Save: 'Speichern',
  saved: 'gespeichert',
  'Shape of the plate': 'Form der Platte',
  'this name is taken:': 'der Name ist vergeben:',
};
