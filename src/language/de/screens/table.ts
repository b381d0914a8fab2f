/** German of the screens: table. */
export const SCREENS_TABLE = {
  'a number that stands': 'eine Zahl steht da',
  'between cells': 'zwischen Zellen',
  'Decimal commas and decimal points stand in one table. Choose which sign holds: numbers with the other one are refused.':
    'Dezimalkommas und Dezimalpunkte stehen in einer Tabelle. Wählen, welches Zeichen gilt: Zahlen mit dem anderen werden abgelehnt.',
  'decimal sign': 'Dezimalzeichen',
  'what it does': 'was sie bewirkt',
};
