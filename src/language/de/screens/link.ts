/** German of the screens: link. */
export const SCREENS_LINK = {
  'A browser does not send what stands after “#” to a server, and this page is built so that it can make no connection: the geometry stays in your browser until you pass the link on. Whoever has the link has the plate, and so has every service that carries it.':
    'Was hinter „#“ steht, sendet ein Browser an keinen Server, und diese Seite ist so gebaut, dass sie keine Verbindung aufnehmen kann: die Geometrie bleibt in diesem Browser, bis der Link weitergegeben wird. Wer den Link hat, hat die Platte, ebenso jeder Dienst, der ihn überträgt.',
  'Copy link': 'Link kopieren',
  'The link is being written …': 'Der Link wird geschrieben …',
  'This page comes from this computer, where nobody else can open the address. Others put the part from “#” on behind the address of their own Evenplate.':
    'Diese Seite kommt von diesem Rechner, wo niemand sonst die Adresse öffnen kann. Andere setzen den Teil ab „#“ hinter die Adresse ihres eigenen Evenplate.',
};
