/** German of messages: schedule. */
export const MESSAGES_SCHEDULE = {
  'A factor lies between {least} and {largest}, its spread below 1000 %: look for hours in the wrong unit.':
    'Ein Faktor liegt zwischen {least} und {largest}, seine Streuung unter 1000 %: nach Stunden in falscher Einheit suchen.',
  'Both are numbers above 0, up to {most} h.': 'Beides sind Zahlen über 0, bis {most} h.',
  'Make them one range, or end the first where the second begins.':
    'Zu einem Bereich machen oder den ersten enden lassen, wo der zweite beginnt.',
  'No build is recorded to learn from.': 'Kein Baujob ist aufgezeichnet, aus dem zu lernen wäre.',
  'Record the planned and the real hours of at least one finished build.':
    'Die geplanten und die wirklichen Stunden mindestens eines fertigen Baujobs aufzeichnen.',
  'Record {record} says {planned} h planned and {real} h real.':
    'Aufzeichnung {record} sagt {planned} h geplant und {real} h wirklich.',
  'The range {from}-{to} does not end after it begins.':
    'Der Bereich {from}-{to} endet nicht nach seinem Beginn.',
  'The ranges {one} and {other} overlap.': 'Die Bereiche {one} und {other} überlappen sich.',
  'The recorded builds give a factor of {found}.':
    'Die aufgezeichneten Baujobs ergeben einen Faktor von {found}.',
  'They are lost with this page; factor and spread stay in the layout.':
    'Sie gehen mit dieser Seite verloren; Faktor und Streuung bleiben im Layout.',
  'This browser does not keep the recorded builds: {detail}':
    'Dieser Browser behält die aufgezeichneten Baujobs nicht: {detail}',
  'Type ranges such as 06:00-22:00, 23:00-24:00, with commas between them.':
    'Bereiche wie 06:00-22:00, 23:00-24:00 eingeben, mit Komma dazwischen.',
  'What runs over midnight is two ranges: one up to 24:00, one from 00:00 on the next day.':
    'Was über Mitternacht geht, sind zwei Bereiche: einer bis 24:00, einer ab 00:00 am nächsten Tag.',
  '“{found}” is not a range of clock times.': '„{found}“ ist kein Bereich von Uhrzeiten.',
};
