/** German of messages: part. */
export const MESSAGES_PART = {
  'An id has 1 to 64 characters.': 'Eine Kennung hat 1 bis 64 Zeichen.',
  'Another part is called “{found}”.': 'Ein anderes Teil heißt schon „{found}“.',
  'Locked, so left where it stands: {parts}.': 'Gesperrt, also nicht bewegt: {parts}.',
  'Shift+P unlocks what is selected; so does the padlock in the list of parts.':
    'Umschalt+P entsperrt die Auswahl; ebenso das Schloss in der Teileliste.',
  'Type an id that no part has.': 'Eine Kennung eingeben, die kein Teil hat.',
  '“{found}” cannot be the id of a part.': '„{found}“ kann keine Kennung eines Teils sein.',
};
