/** German of messages: revision. */
export const MESSAGES_REVISION = {
  'A draft is reviewed, then released, then superseded, one after the other.':
    'Ein Entwurf wird geprüft, dann freigegeben, dann ersetzt, eines nach dem anderen.',
  'A release waits until nothing blocks hand-over.': 'Eine Freigabe wartet, bis nichts die Übergabe sperrt.',
  'Any edit of the plate begins the next revision.': 'Jede Änderung der Platte beginnt die nächste Revision.',
  'Revision {former} is {state} and stays as it is: this edit began revision {name}, a draft derived from it.':
    'Revision {former} ist {state} und bleibt, wie sie ist: diese Änderung hat Revision {name} begonnen, einen davon abgeleiteten Entwurf.',
  'Revision {name} cannot be released: {why}.': 'Revision {name} kann nicht freigegeben werden: {why}.',
  'Revision {name} is {state} and cannot become {wanted}.':
    'Revision {name} ist {state} und kann nicht {wanted} werden.',
  'Revision {name} is {state}: what it records is not changed any more.':
    'Revision {name} ist {state}: was sie festhält, wird nicht mehr geändert.',
  'Revision {name} names no author.': 'Revision {name} nennt keinen Verfasser.',
  'Revision {name} names no reviewer.': 'Revision {name} nennt keinen Prüfer.',
  'Type who made this layout, then mark it as reviewed.':
    'Eingeben, wer dieses Layout gemacht hat, dann als geprüft kennzeichnen.',
  'Type who reviewed this layout, best somebody other than its author.':
    'Eingeben, wer dieses Layout geprüft hat, am besten jemand anderes als der Verfasser.',
  'Undo goes back to {former}.': 'Rückgängig führt zu {former} zurück.',
};
