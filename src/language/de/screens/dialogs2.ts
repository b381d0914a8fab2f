/** German of the screens: dialogs, from “none: a reader cannot te” to “{problems} problems”. */
export const SCREENS_DIALOGS2 = {
  'none: a reader cannot tell this plate from a later one by name':
    'keine: dem Namen nach ist diese Platte von einer späteren nicht zu unterscheiden',
  'NOT FOR USE: something blocks hand-over, see the problems. Every file says so, in its name and inside.':
    'NICHT ZUR VERWENDUNG: etwas hindert die Übergabe, siehe Probleme. Jede Datei sagt es, im Namen („NOT FOR USE“) und innen.',
  'not on this plate as it is': 'nicht auf dieser Platte, wie sie ist',
  'not with these parts selected': 'nicht mit dieser Auswahl',
  'numbers as': 'Zahlen als',
  'One page.': 'Eine Seite.',
  'Open outlines or a mesh': 'Umrisse oder ein Netz öffnen',
  'part numbers': 'Teilenummern',
  'Part {part}; the original counts as the first.': 'Teil {part}; das Original zählt als erstes.',
  'PDF on': 'PDF auf',
  'Place a table': 'Tabelle setzen',
  'Place outlines of {name}': 'Umrisse aus {name} setzen',
  'Place {name}': '{name} setzen',
  Print: 'Drucken',
  'Problems, being checked': 'Probleme, wird geprüft',
  Process: 'Prozess',
  'Put this message away': 'Meldung schließen',
  'Reading lines and curves …': 'Linien und Kurven werden gelesen …',
  'Reading the library …': 'Bibliothek wird gelesen …',
  'Reading the outlines …': 'Umrisse werden gelesen …',
  'Reading the text …': 'Text wird gelesen …',
  'Reading which ends meet …': 'Enden werden verbunden …',
  Release: 'Freigeben',
  Report: 'Bericht',
  'Revision {name}': 'Revision {name}',
  'Revision {name} stays as it is: the next edit of the plate begins revision {next}.':
    'Revision {name} bleibt, wie sie ist: die nächste Änderung der Platte beginnt Revision {next}.',
  'Save as PDF': 'Als PDF speichern',
  'Saved {done}.': '{done} gespeichert.',
  'seams here': 'Nähte hier',
  'Sheet of {name}': 'Blatt von {name}',
  'Sheet, being made': 'Blatt, wird erstellt',
  'States of a revision': 'Zustände einer Revision',
  'Table of parts': 'Teiletabelle',
  'Table, as copied from a spreadsheet': 'Tabelle, aus einer Tabellenkalkulation kopiert',
  Tables: 'Tabellen',
  'Take over a division': 'Aufteilung übernehmen',
  'Take this one': 'Übernehmen',
  'The open plate at z {height} mm. Hours are of the whole build, estimates unvalidated by measurement for several lasers; no division is the best in everything.':
    'Die offene Platte bei z {height} mm. Stunden gelten für den ganzen Baujob, für mehrere Laser durch keine Messung bestätigte Schätzungen; keine Aufteilung ist in allem die beste.',
  'The plan as a picture, with axes, flow and blade, for documents and mail.':
    'Die Draufsicht als Bild, mit Achsen, Strömung und Klinge, für Dokumente und Mail.',
  'The plate is being checked, {percent}; files wait for it.':
    'Die Platte wird geprüft, {percent}; Dateien warten darauf.',
  'The plate is being checked; files wait for it.': 'Die Platte wird geprüft; Dateien warten darauf.',
  'The plate is empty.': 'Die Platte ist leer.',
  'The sheet could not be made: {detail}. Close it and try again.':
    'Das Blatt konnte nicht erstellt werden: {detail}. Schließen und noch einmal versuchen.',
  'This layout has no revision yet. A revision gives it a name, a date and a reason beside its checksum, and records who made it, who reviewed it and that it was released.':
    'Dieses Layout hat noch keine Revision. Eine Revision gibt ihm neben der Prüfsumme Namen, Datum und Grund und hält fest, wer es gemacht und wer es geprüft hat und dass es freigegeben ist.',
  'Time per layer': 'Zeit je Schicht',
  'TIME PER LAYER': 'ZEIT JE SCHICHT',
  Tools: 'Werkzeuge',
  'True-size outlines in mm, origin at the platform’s centre, to lay under other drawings.':
    'Umrisse in wahrer Größe in mm, Ursprung in der Mitte der Bauplattform, zum Unterlegen unter andere Zeichnungen.',
  'Two to four layouts stand side by side: add {count} more.':
    'Zwei bis vier Layouts stehen nebeneinander: noch {count} hinzufügen.',
  View: 'Ansicht',
  'View beside the elevation': 'Ansicht neben der Vorderansicht',
  'What the blade meets': 'Was die Klinge trifft',
  'What this is not': 'Was dies nicht ist',
  'where most parts are exposed': 'wo die meisten Teile belichtet werden',
  'z {shown} mm, as shown': 'z {shown} mm, wie gezeigt',
  'Zones and seams': 'Zonen und Nähte',
  '{count} parts; the original counts as the first.': '{count} Teile; das Original zählt als erstes.',
  '{count} Something blocks hand-over: every page says NOT FOR USE.':
    '{count} Etwas hindert die Übergabe: jede Seite sagt NICHT VERWENDEN.',
  '{name}, checksum {checksum}': '{name}, Prüfsumme {checksum}',
  '{name}, {state}, {date}': '{name}, {state}, {date}',
  '{name}, {state}, {date}: what is edited later is not in the link':
    '{name}, {state}, {date}: spätere Änderungen stehen nicht im Link',
  '{pages} pages: not all has room on one, and the first says what is on the others.':
    '{pages} Seiten: nicht alles passt auf eine, und die erste sagt, was auf den anderen steht.',
  '{problems} problems': '{problems} Probleme',
};
