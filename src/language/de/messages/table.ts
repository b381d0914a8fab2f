/** German of src/layout/messages/tableMessages.ts. */
export const TABLE_MESSAGES = {
  'The table has {found} characters; {limit} are read at most.':
    'Die Tabelle hat {found} Zeichen; höchstens {limit} werden gelesen.',
  'Paste it in portions.': 'In Teilen einfügen.',
  '{found} cells in {expected} columns.': '{found} Zellen in {expected} Spalten.',
  'Choose the separator that the table was written with, or put cells that hold it into quotes.':
    'Das Trennzeichen wählen, mit dem die Tabelle geschrieben ist, oder Zellen, die es enthalten, in Anführungszeichen setzen.',
  '{column}: “{found}” is not read.': '{column}: „{found}“ wird nicht gelesen.',
  'Numbers take a unit; the decimal sign is one for the whole table.':
    'Zahlen dürfen eine Einheit haben; das Dezimalzeichen ist eines für die ganze Tabelle.',
  '“{found}” is no number of a part.': '„{found}“ ist keine Nummer eines Teils.',
  'Take 1 to 64 characters without line breaks.': '1 bis 64 Zeichen ohne Zeilenumbrüche nehmen.',
  'No shape.': 'Keine Form.',
  'A part that is new needs the name of a shape on this plate.':
    'Ein neues Teil braucht den Namen einer Form dieser Platte.',
  'No x or no y.': 'Kein x oder kein y.',
  'A part that is new needs both.': 'Ein neues Teil braucht beides.',
  'No shape “{found}” on this plate.': 'Keine Form „{found}“ auf dieser Platte.',
  'Open its outline or mesh first, or take it from the library.':
    'Zuerst ihren Umriss oder ihr Netz öffnen oder sie aus der Bibliothek nehmen.',
  'No laser “{found}” on this machine.': 'Kein Laser „{found}“ an dieser Maschine.',
  'Take one of {lasers}, or “-” for no pin.': 'Einen von {lasers} nehmen oder „-“ für keine feste Zuweisung.',
  '{part} is locked and keeps its place.': '{part} ist gesperrt und behält seinen Ort.',
  'Unlock it first.': 'Zuerst entsperren.',
  '{from} is taken: becomes {to}.': '{from} ist vergeben: wird {to}.',
  'Choose “change” to give the part that stands there these values.':
    '„Ändern“ wählen, um dem Teil, das dort steht, diese Werte zu geben.',
  '{from} stands in row {row} with other values: becomes {to}.':
    '{from} steht in Zeile {row} mit anderen Werten: wird {to}.',
  'Give every part its own number where the old one matters.':
    'Jedem Teil eine eigene Nummer geben, wo die alte wichtig ist.',
  'The same as row {row}, counted once.': 'Wie Zeile {row}, einmal gezählt.',
  'Nothing is to be done.': 'Es ist nichts zu tun.',
};
