/** German of the screens: table. */
export const SCREENS_TABLE = {
  'a number that stands': 'eine Zahl steht da',
  'adds a new part': 'fügt ein neues Teil hinzu',
  'as it stands': 'unverändert',
  'between cells': 'zwischen Zellen',
  'Change {count} [part|parts]': '{count} [Teil|Teile] ändern',
  'changes that part': 'ändert dieses Teil',
  'column {number}': 'Spalte {number}',
  comma: 'Komma',
  'comma, 1,5': 'Komma, 1,5',
  'counted once': 'einmal gezählt',
  'Every “{sign}” has three digits behind it: it is read as the decimal sign. Where it sets thousands apart, choose the other sign, and take it out of the refused numbers.':
    'Hinter jedem „{sign}“ stehen drei Ziffern: es gilt als Dezimalzeichen. Trennt es Tausender, das andere Zeichen wählen und es aus den abgelehnten Zahlen entfernen.',
  'Decimal commas and decimal points stand in one table. Choose which sign holds: numbers with the other one are refused.':
    'Dezimalkommas und Dezimalpunkte stehen in einer Tabelle. Wählen, welches Zeichen gilt: Zahlen mit dem anderen werden abgelehnt.',
  'decimal sign': 'Dezimalzeichen',
  'new, as {part}': 'neu, als {part}',
  'No row of values yet.': 'Noch keine Zeile mit Werten.',
  'Place {add}, change {count} [part|parts]': '{add} setzen, {count} [Teil|Teile] ändern',
  'Place {count} [part|parts]': '{count} [Teil|Teile] setzen',
  'point, 1.5': 'Punkt, 1.5',
  refused: 'abgelehnt',
  semicolon: 'Strichpunkt',
  'what it does': 'was sie bewirkt',
  '{choice} (as told)': '{choice} (wie erkannt)',
  '{column} is': '{column} ist',
  '{count} [row|rows]: {list}': '{count} [Zeile|Zeilen]: {list}',
  '{shown} of {count} rows, those first that are refused or get another number.':
    '{shown} von {count} Zeilen, zuerst die abgelehnten und die mit anderer Nummer.',
};
