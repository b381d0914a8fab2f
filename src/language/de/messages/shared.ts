/** German of what several tables of messages say. */
export const SHARED_MESSAGES = {
  'The command cannot be run: {detail}.': 'Der Befehl kann nicht ausgeführt werden: {detail}.',
  'The file cannot be read: {reason}.': 'Die Datei kann nicht gelesen werden: {reason}.',
  'The file holds {found} MB.': 'Die Datei enthält {found} MB.',
  'Save the layout as a file, or allow site data for this page.':
    'Das Layout als Datei speichern oder Websitedaten für diese Seite erlauben.',
  'Nothing was changed.': 'Nichts wurde geändert.',
  'Nothing needs to be done.': 'Nichts ist zu tun.',
  'The file does not say its unit; one unit was taken as 1 mm.':
    'Die Datei nennt ihre Einheit nicht; eine Einheit gilt als 1 mm.',
  'Choose the unit.': 'Die Einheit wählen.',
};
