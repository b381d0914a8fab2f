/** German of messages: library. */
export const MESSAGES_LIBRARY = {
  'A library file has "format": "{format}"; nothing was taken from this one.':
    'Eine Bibliotheksdatei hat "format": "{format}"; aus dieser wurde nichts übernommen.',
  'A library file is what “Export all” saved; nothing was taken from this one.':
    'Eine Bibliotheksdatei ist, was „Alle exportieren“ gespeichert hat; aus dieser wurde nichts übernommen.',
  'A library file may hold up to {limit} MB; nothing was taken from this one.':
    'Eine Bibliotheksdatei darf bis zu {limit} MB enthalten; aus dieser wurde nichts übernommen.',
  'A name has 1 to {longest} characters.': 'Ein Name hat 1 bis {longest} Zeichen.',
  'Another window has changed “{name}” meanwhile.': 'Ein anderes Fenster hat „{name}“ inzwischen geändert.',
  'Delete entries, or save the layout as a file.': 'Einträge löschen oder das Layout als Datei speichern.',
  'Entry {number} of the library file, the {kind} “{name}”, is refused: {detail}':
    'Eintrag {number} der Bibliotheksdatei ({kind} „{name}“) wird abgelehnt: {detail}',
  'Import it in the library (File, Library).': 'In der Bibliothek importieren (Datei, Bibliothek).',
  'In the library file {path} is {found}.': 'In der Bibliotheksdatei ist der Wert von {path} {found}.',
  'It has to be {accepted}; nothing was taken from the file.':
    'Erwartet: {accepted}; aus der Datei wurde nichts übernommen.',
  'It stays in the library; the plate is as it was.':
    'Der Eintrag bleibt in der Bibliothek; die Platte ist, wie sie war.',
  'Look at the zones and the pinned parts; undo brings the machine before back.':
    'Zonen und fest zugewiesene Teile ansehen; Rückgängig bringt die vorige Maschine zurück.',
  'Nothing was changed; look at the list and try again.':
    'Nichts wurde geändert; die Liste ansehen und noch einmal versuchen.',
  'Nothing was taken from the file.': 'Aus der Datei wurde nichts übernommen.',
  'The file is no library file: its format is {found}.':
    'Die Datei ist keine Bibliotheksdatei: ihr Format ist {found}.',
  'The library file has version {found}.': 'Die Bibliotheksdatei hat Version {found}.',
  'The library file holds {found} MB.': 'Die Bibliotheksdatei enthält {found} MB.',
  'The library file is not JSON.': 'Die Bibliotheksdatei ist kein JSON.',
  'The machine has other lasers than the one before: {moves}.':
    'Die Maschine hat andere Laser als die vorige: {moves}.',
  'The plate kept aside is another one now, or is there no more.':
    'Die beiseitegelegte Platte ist jetzt eine andere oder nicht mehr da.',
  'This browser gives the page no database, as in some private windows: the library is not there.':
    'Dieser Browser gibt der Seite keine Datenbank, wie manches private Fenster: die Bibliothek fehlt.',
  'This browser’s storage is full: the library is as it was before.':
    'Der Speicher dieses Browsers ist voll: die Bibliothek ist, wie sie war.',
  'This is a library file, not one layout.': 'Das ist eine Bibliotheksdatei, kein einzelnes Layout.',
  'This program reads version {newest}; nothing was taken from the file.':
    'Dieses Programm liest Version {newest}; aus der Datei wurde nichts übernommen.',
  '“{found}” cannot be the name of an entry.': '„{found}“ kann kein Name eines Eintrags sein.',
  '“{name}” cannot be opened: {detail}': '„{name}“ lässt sich nicht öffnen: {detail}',
  '“{name}” is not in the library any more: another window has deleted it.':
    '„{name}“ ist nicht mehr in der Bibliothek: ein anderes Fenster hat den Eintrag gelöscht.',
};
