/** German of messages: table. */
export const MESSAGES_TABLE = {
  'A part that is new needs both.': 'Ein neues Teil braucht beides.',
  'A part that is new needs the name of a shape on this plate.':
    'Ein neues Teil braucht den Namen einer Form dieser Platte.',
  'Choose the separator that the table was written with, or put cells that hold it into quotes.':
    'Das Trennzeichen wählen, mit dem die Tabelle geschrieben ist, oder Zellen, die es enthalten, in Anführungszeichen setzen.',
  'Choose “change” to give the part that stands there these values.':
    '„ändert dieses Teil“ wählen, um dem Teil, das dort steht, diese Werte zu geben.',
  'Give every part its own number where the old one matters.':
    'Jedem Teil eine eigene Nummer geben, wo die alte wichtig ist.',
  'No laser “{found}” on this machine.': 'Kein Laser „{found}“ an dieser Maschine.',
  'No shape “{found}” on this plate.': 'Keine Form „{found}“ auf dieser Platte.',
  'No shape.': 'Keine Form.',
  'No x or no y.': 'Kein x oder kein y.',
  'Nothing is to be done.': 'Es ist nichts zu tun.',
  'Numbers take a unit; the decimal sign is one for the whole table.':
    'Zahlen dürfen eine Einheit haben; das Dezimalzeichen ist eines für die ganze Tabelle.',
  'Open its outline or mesh first, or take it from the library.':
    'Zuerst ihren Umriss oder ihr Netz öffnen oder sie aus der Bibliothek nehmen.',
  'Paste it in portions.': 'In Teilen einfügen.',
  'Take 1 to 64 characters without line breaks.': '1 bis 64 Zeichen ohne Zeilenumbrüche nehmen.',
  'Take one of {lasers}, or “-” for no pin.': 'Einen von {lasers} nehmen oder „-“ für keine feste Zuweisung.',
  'The same as row {row}, counted once.': 'Wie Zeile {row}, einmal gezählt.',
  'The table has {found} characters; {limit} are read at most.':
    'Die Tabelle hat {found} Zeichen; höchstens {limit} werden gelesen.',
  'Unlock it first.': 'Zuerst entsperren.',
  '{column}: “{found}” is not read.': '{column}: „{found}“ wird nicht gelesen.',
  '{found} cells in {expected} columns.': '{found} Zellen in {expected} Spalten.',
  '{from} is taken: becomes {to}.': '{from} ist vergeben: wird {to}.',
  '{from} stands in row {row} with other values: becomes {to}.':
    '{from} steht in Zeile {row} mit anderen Werten: wird {to}.',
  '{part} is locked and keeps its place.': '{part} ist gesperrt und behält seinen Ort.',
  '“{found}” is no number of a part.': '„{found}“ ist keine Nummer eines Teils.',
};
