/** German of messages: link. */
export const MESSAGES_LINK = {
  'A plate’s link has a part after “#” that starts with “L1.” or “C1.”.':
    'Der Link einer Platte hat hinter „#“ einen Teil, der mit „L1.“ oder „C1.“ beginnt.',
  'Copy it again from where it was made, or ask for a layout file.':
    'Dort, wo er gemacht wurde, noch einmal kopieren oder um eine Layoutdatei bitten.',
  'Copy it whole, or ask for a layout file: long links break in mail and chat.':
    'Ganz kopieren oder um eine Layoutdatei bitten: lange Links brechen in Mail und Chat.',
  'Four stand side by side at most: take some away first.':
    'Höchstens vier stehen im Vergleich: zuerst einige wegnehmen.',
  'Hand over a layout file instead.': 'Stattdessen eine Layoutdatei übergeben.',
  'Nothing was opened. Ask for a layout file.': 'Nichts wurde geöffnet. Um eine Layoutdatei bitten.',
  'Open it in the workbench, which tells them apart.': 'In Evenplate öffnen, das beide unterscheidet.',
  'Open it with that version, or ask for a layout file.':
    'Mit jener Version öffnen oder um eine Layoutdatei bitten.',
  'The address holds no plate.': 'Die Adresse enthält keine Platte.',
  'The link could not be read: a part of the page could not be loaded.':
    'Der Link konnte nicht gelesen werden: ein Teil der Seite ließ sich nicht laden.',
  'The link holds more than a layout can.': 'Der Link enthält mehr, als ein Layout kann.',
  'The link holds {found} layouts, and there is room for {room} more.':
    'Der Link enthält {found} Layouts, und Platz ist noch für {room}.',
  'The link is of the other kind: one plate has “L” after “#”, plates side by side have “C”.':
    'Der Link ist von der anderen Art: eine Platte hat „L“ hinter „#“, ein Vergleich von Platten „C“.',
  'The link was altered: its content does not fit its check characters.':
    'Der Link wurde verändert: sein Inhalt passt nicht zu seinen Prüfzeichen.',
  'The link was cut: its end is missing.': 'Der Link ist abgeschnitten: sein Ende fehlt.',
  'The link was made by a newer version (prefix {found}; this one reads up to {newest}).':
    'Der Link stammt von einer neueren Version (Präfix {found}; diese liest bis {newest}).',
  'The link would not bring this back to the last digit.':
    'Der Link brächte dies nicht bis auf die letzte Stelle zurück.',
  'The open plate is untouched. Load the page again and open the link once more.':
    'Die offene Platte ist unberührt. Die Seite neu laden und den Link noch einmal öffnen.',
  'Use: npm run --silent layout -- LINK (a whole address, the part after “#”, or - for standard input)':
    'Aufruf: npm run --silent layout -- LINK (ganze Adresse, der Teil hinter „#“ oder - für die Standardeingabe)',
  'Use: npm run --silent link -- FILE': 'Aufruf: npm run --silent link -- FILE',
};
