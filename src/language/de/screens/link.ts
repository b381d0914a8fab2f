/** German of the screens: link. */
export const SCREENS_LINK = {
  'A browser does not send what stands after “#” to a server, and this page is built so that it can make no connection: the geometry stays in your browser until you pass the link on. Whoever has the link has the plate, and so has every service that carries it.':
    'Was hinter „#“ steht, sendet ein Browser an keinen Server, und diese Seite ist so gebaut, dass sie keine Verbindung aufnehmen kann: die Geometrie bleibt in diesem Browser, bis der Link weitergegeben wird. Wer den Link hat, hat die Platte, ebenso jeder Dienst, der ihn überträgt.',
  'Copied.': 'Kopiert.',
  'Copy link': 'Link kopieren',
  'Over {limit} characters: mail and chat break it, and some browsers do not open it. Hand over the file.':
    'Über {limit} Zeichen: Mail und Chat zerreißen ihn, und manche Browser öffnen ihn nicht. Die Datei übergeben.',
  'Over {limit} characters: many mail and chat programs break it. Hand over the file, or try the link first.':
    'Über {limit} Zeichen: viele Mail- und Chatprogramme zerreißen ihn. Die Datei übergeben oder den Link erst probieren.',
  'The browser does not let the page copy: press Ctrl+C, the link is selected.':
    'Der Browser lässt die Seite nicht kopieren: Strg+C drücken, der Link ist ausgewählt.',
  'The link is being written …': 'Der Link wird geschrieben …',
  'This page comes from this computer, where nobody else can open the address. Others put the part from “#” on behind the address of their own Evenplate.':
    'Diese Seite kommt von diesem Rechner, wo niemand sonst die Adresse öffnen kann. Andere setzen den Teil ab „#“ hinter die Adresse ihres eigenen Evenplate.',
  '{count} characters.': '{count} Zeichen.',
};
