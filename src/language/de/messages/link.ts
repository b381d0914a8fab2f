/** German of src/layout/messages/linkMessages.ts. */
export const LINK_MESSAGES = {
  'Use: npm run --silent link -- FILE': 'Aufruf: npm run --silent link -- FILE',
  'Use: npm run --silent layout -- LINK (a whole address, the part after “#”, or - for standard input)':
    'Aufruf: npm run --silent layout -- LINK (ganze Adresse, der Teil hinter „#“ oder - für die Standardeingabe)',
  'The link could not be read: a part of the page could not be loaded.':
    'Der Link konnte nicht gelesen werden: ein Teil der Seite ließ sich nicht laden.',
  'The open plate is untouched. Load the page again and open the link once more.':
    'Die offene Platte ist unberührt. Die Seite neu laden und den Link noch einmal öffnen.',
  'The link would not bring this back to the last digit.':
    'Der Link brächte dies nicht bis auf die letzte Stelle zurück.',
  'Hand over a layout file instead.': 'Stattdessen eine Layoutdatei übergeben.',
  'The link holds {found} layouts, and there is room for {room} more.':
    'Der Link enthält {found} Layouts, und Platz ist noch für {room}.',
  'Four stand side by side at most: take some away first.':
    'Höchstens vier stehen im Vergleich: zuerst einige wegnehmen.',
  'The address holds no plate.': 'Die Adresse enthält keine Platte.',
  'A plate’s link has a part after “#” that starts with “L1.” or “C1.”.':
    'Der Link einer Platte hat hinter „#“ einen Teil, der mit „L1.“ oder „C1.“ beginnt.',
  'The link is of the other kind: one plate has “L” after “#”, plates side by side have “C”.':
    'Der Link ist von der anderen Art: eine Platte hat „L“ hinter „#“, ein Vergleich von Platten „C“.',
  'Open it in the workbench, which tells them apart.': 'In Evenplate öffnen, das beide unterscheidet.',
  'The link was made by a newer version (prefix {found}; this one reads up to {newest}).':
    'Der Link stammt von einer neueren Version (Präfix {found}; diese liest bis {newest}).',
  'Open it with that version, or ask for a layout file.':
    'Mit jener Version öffnen oder um eine Layoutdatei bitten.',
  'The link was cut: its end is missing.': 'Der Link ist abgeschnitten: sein Ende fehlt.',
  'Copy it whole, or ask for a layout file: long links break in mail and chat.':
    'Ganz kopieren oder um eine Layoutdatei bitten: lange Links brechen in Mail und Chat.',
  'The link was altered: its content does not fit its check characters.':
    'Der Link wurde verändert: sein Inhalt passt nicht zu seinen Prüfzeichen.',
  'Copy it again from where it was made, or ask for a layout file.':
    'Dort, wo er gemacht wurde, noch einmal kopieren oder um eine Layoutdatei bitten.',
  'The link holds more than a layout can.': 'Der Link enthält mehr, als ein Layout kann.',
  'Nothing was opened. Ask for a layout file.': 'Nichts wurde geöffnet. Um eine Layoutdatei bitten.',
};
