/** German of the screens: dialogs. */
export const SCREENS_DIALOGS = {
  'A plan and an estimate. The machine maker’s instructions, site rules, local law and trained people decide.':
    'Ein Plan und eine Schätzung. Es entscheiden die Anweisungen des Maschinenherstellers, die Regeln des Betriebs, das geltende Recht und geschulte Personen.',
  'About Evenplate': 'Über Evenplate',
  'All are cut at one height and drawn at one zoom. Estimates; figures for several lasers are unvalidated by measurement. No row outweighs another: there is no total score. What leaves something unexposed is not marked as best.':
    'Alle sind auf einer Höhe geschnitten und in einem Maßstab gezeichnet. Schätzungen; Werte für mehrere Laser sind durch keine Messung bestätigt. Keine Zeile wiegt mehr als eine andere: es gibt keine Gesamtnote. Was etwas unbelichtet lässt, gilt nie als Bestes.',
  'All divisions': 'Alle Aufteilungen',
  'All published timing found is for one laser: figures for several lasers are unvalidated by measurement. Plumes are geometry only, not a flow simulation; no published plume width was found, so it is a setting.':
    'Alle gefundenen veröffentlichten Zeiten gelten für einen Laser: Werte für mehrere Laser sind durch keine Messung bestätigt. Rauchfahnen sind reine Geometrie, keine Strömungssimulation; eine veröffentlichte Breite wurde nicht gefunden, darum ist sie eine Einstellung.',
  'Areas come from sections at the height shown. Loads follow one time model: area over hatch distance and speed, a gap per vector, contours, a gap per piece. The best possible time is proven, not guessed.':
    'Flächen stammen aus Schnitten auf der gezeigten Höhe. Lasten folgen einem Zeitmodell: Fläche durch Hatchabstand und Geschwindigkeit, eine Pause je Vektor, Konturen, eine Pause je Stück. Die bestmögliche Zeit ist bewiesen, nicht geschätzt.',
  'Arranged plate': 'Platte, angeordnet',
  as: 'als',
  'At one height': 'Auf einer Höhe',
  'Author and reviewer are one name: nobody else has looked at this plate.':
    'Verfasser und Prüfer tragen denselben Namen: niemand sonst hat diese Platte gesehen.',
  'Begin revision A': 'Revision A beginnen',
  Bodies: 'Körper',
  Close: 'Schließen',
  'Columns by heading, English or German (id or Nr, shape or Form, x, y, turn, laser, seams, time factor; units as “x mm” or “x in”), else in this order. An empty cell leaves a value as it is; “-” takes a pin away.':
    'Spalten nach Überschrift, englisch oder deutsch (id oder Nr, shape oder Form, x, y, turn, laser, seams, time factor; Einheiten als „x mm“ oder „x in“), sonst in dieser Reihenfolge. Eine leere Zelle lässt den Wert, wie er ist; „-“ löst die feste Zuweisung.',
  Commands: 'Befehle',
  'Condensate and filter residue of reactive alloys can ignite in air hours later; inert gas displaces oxygen; platform and parts stay hot. A service event in unattended hours is a fault to resolve, never to skip.':
    'Kondensat und Filterrückstände reaktiver Legierungen können sich an Luft noch Stunden später entzünden; Schutzgas verdrängt Sauerstoff; Bauplattform und Teile bleiben heiß. Eine Wartung in unbesetzten Stunden ist ein Fehler, der behoben und nie übergangen wird.',
  'cut at': 'geschnitten bei',
  date: 'Datum',
  'Draw a part': 'Teil zeichnen',
  Elevation: 'Vorderansicht',
  ELEVATION: 'VORDERANSICHT',
  'Evenplate divides the platform of a multi-laser metal powder bed machine among its lasers and shows what each division costs in time, seams and hours. Everything is computed in this browser; nothing leaves it.':
    'Evenplate teilt die Bauplattform einer Mehrlaser-Maschine für Metallpulver unter ihren Lasern auf und zeigt, was jede Aufteilung an Zeit, Nähten und Stunden kostet. Alles wird in diesem Browser gerechnet; nichts verlässt ihn.',
  'Every figure of the readout says what it means when the pointer rests on it or the Tab key reaches it. Fields read “25,4 mm”, “1 in” and “1/4 in”; Enter commits, Escape restores, the arrow keys step. The wheel zooms at the pointer; Shift adds to the selection; Alt drags a copy; Ctrl drags without snapping.':
    'Jeder Wert der Anzeige erklärt sich, wenn der Zeiger darauf ruht oder die Tabulatortaste ihn erreicht. Felder lesen „25,4 mm“, „1 in“ und „1/4 in“; Eingabe übernimmt, Escape stellt wieder her, die Pfeiltasten zählen weiter. Das Rad zoomt am Zeiger; Umschalt erweitert die Auswahl; Alt zieht eine Kopie; Strg zieht ohne Fang.',
  'Four layouts are the most.': 'Mehr als vier Layouts gehen nicht.',
  'Hand over files': 'Dateien übergeben',
  'Height at which all are cut': 'Höhe, auf der alle geschnitten werden',
  holds: 'enthält',
  'Kinds of entries': 'Arten von Einträgen',
  Layers: 'Schichten',
  Library: 'Bibliothek',
  'Link of this plate': 'Link dieser Platte',
  'Lists and settings': 'Listen und Einstellungen',
  'Loading …': 'Lädt …',
  Messages: 'Meldungen',
  'Names are recorded as they are typed: a page cannot prove who typed them. Where that matters, sign the printed sheet.':
    'Namen werden festgehalten, wie sie getippt sind: eine Seite kann nicht beweisen, wer sie getippt hat. Wo es darauf ankommt, das gedruckte Blatt unterschreiben.',
  'Names carry the layout, its revision and its checksum. Hours and loads are estimates. Nothing leaves this computer but by your own hand.':
    'Namen tragen Layout, Revision und Prüfsumme. Stunden und Lasten sind Schätzungen. Nichts verlässt diesen Rechner, außer von eigener Hand.',
  'No command of that name.': 'Kein Befehl dieses Namens.',
  'NOT FOR USE: something blocks hand-over, see the problems. Every file says so, in its name and inside.':
    'NICHT ZUR VERWENDUNG: etwas hindert die Übergabe, siehe Probleme. Jede Datei sagt es, im Namen („NOT FOR USE“) und innen.',
  'numbers as': 'Zahlen als',
  'Open outlines or a mesh': 'Umrisse oder ein Netz öffnen',
  'PDF on': 'PDF auf',
  Print: 'Drucken',
  'Put this message away': 'Meldung schließen',
  'Reading the library …': 'Bibliothek wird gelesen …',
  Report: 'Bericht',
  'Save as PDF': 'Als PDF speichern',
  'Sheet, being made': 'Blatt, wird erstellt',
  'States of a revision': 'Zustände einer Revision',
  'Table of parts': 'Teiletabelle',
  Tables: 'Tabellen',
  'The plate is empty.': 'Die Platte ist leer.',
  'This layout has no revision yet. A revision gives it a name, a date and a reason beside its checksum, and records who made it, who reviewed it and that it was released.':
    'Dieses Layout hat noch keine Revision. Eine Revision gibt ihm neben der Prüfsumme Namen, Datum und Grund und hält fest, wer es gemacht und wer es geprüft hat und dass es freigegeben ist.',
  'View beside the elevation': 'Ansicht neben der Vorderansicht',
  'What this is not': 'Was dies nicht ist',
  'Zones and seams': 'Zonen und Nähte',
};
