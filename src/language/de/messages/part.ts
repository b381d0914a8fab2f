/** German of messages: part. */
export const MESSAGES_PART = {
  'An id has 1 to 64 characters.': 'Eine Kennung hat 1 bis 64 Zeichen.',
  'Another part is called “{found}”.': 'Ein anderes Teil heißt schon „{found}“.',
  'Locked, so left where it stands: {parts}.': 'Gesperrt, also nicht bewegt: {parts}.',
  'Shift+P unlocks what is selected; so does the padlock in the list of parts.':
    'Umschalt+P entsperrt die Auswahl; ebenso das Schloss in der Teileliste.',
  'The order of the list stays: {why}.': 'Die Reihenfolge der Liste bleibt: {why}.',
  'Type an id that no part has.': 'Eine Kennung eingeben, die kein Teil hat.',
  'With no search and no sorted column Alt with an arrow moves the selected parts; “Keep this order” takes over what a column sorts.':
    'Ohne Suche und ohne sortierte Spalte verschiebt Alt mit einem Pfeil die ausgewählten Teile; „Diese Reihenfolge behalten“ übernimmt, was eine Spalte sortiert.',
  '“{found}” cannot be the id of a part.': '„{found}“ kann keine Kennung eines Teils sein.',
};
