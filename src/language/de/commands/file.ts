/** German of the commands: file. */
export const COMMANDS_FILE = {
  'Copy link …': 'Link kopieren …',
  'Hand over files …': 'Dateien übergeben …',
  'Library …': 'Bibliothek …',
  'machine “{name}” of the library': 'Maschine „{name}“ aus der Bibliothek',
  'New plate': 'Neue Platte',
  'Open layout file …': 'Layoutdatei öffnen …',
  'Open outlines or a mesh …': 'Umrisse oder ein Netz öffnen …',
  'Open {name} by its link': '{name} über den Link öffnen',
  'Open “{name}” of the library': '„{name}“ aus der Bibliothek öffnen',
  'process “{name}” of the library': 'Prozess „{name}“ aus der Bibliothek',
  'shape “{name}” of the library': 'Form „{name}“ aus der Bibliothek',
  'Sheet …': 'Blatt …',
  'Side by side …': 'Vergleich …',
  '{to} takes over from {from}': '{to} übernimmt von {from}',
};
