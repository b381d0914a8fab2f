/** German of the screens: dialogs, from “A draft is edited in pla” to “No command of that name.”. */
export const SCREENS_DIALOGS1 = {
  'A draft is edited in place. Reviewed, it stays as it is, and an edit begins the next revision.':
    'Ein Entwurf wird direkt geändert. Nach der Prüfung bleibt er unverändert, und eine Änderung beginnt die nächste Revision.',
  'A plan and an estimate. The machine maker’s instructions, site rules, local law and trained people decide.':
    'Ein Plan und eine Schätzung. Es entscheiden die Anweisungen des Maschinenherstellers, die Regeln des Betriebs, das geltende Recht und geschulte Personen.',
  'About Evenplate': 'Über Evenplate',
  'All are cut at one height and drawn at one zoom. Estimates; figures for several lasers are unvalidated by measurement. No row outweighs another: there is no total score. What leaves something unexposed is not marked as best.':
    'Alle sind auf einer Höhe geschnitten und in einem Maßstab gezeichnet. Schätzungen; Werte für mehrere Laser sind durch keine Messung bestätigt. Keine Zeile wiegt mehr als eine andere: es gibt keine Gesamtnote. Was etwas unbelichtet lässt, gilt nie als Bestes.',
  'All divisions': 'Alle Aufteilungen',
  'All figures of this layer and of the whole build, for other programs.':
    'Alle Werte dieser Schicht und des ganzen Baujobs, für andere Programme.',
  'All published timing found is for one laser: figures for several lasers are unvalidated by measurement. Plumes are geometry only, not a flow simulation; no published plume width was found, so it is a setting.':
    'Alle gefundenen veröffentlichten Zeiten gelten für einen Laser: Werte für mehrere Laser sind durch keine Messung bestätigt. Rauchfahnen sind reine Geometrie, keine Strömungssimulation; eine veröffentlichte Breite wurde nicht gefunden, darum ist sie eine Einstellung.',
  'Areas come from sections at the height shown. Loads follow one time model: area over hatch distance and speed, a gap per vector, contours, a gap per piece. The best possible time is proven, not guessed.':
    'Flächen stammen aus Schnitten auf der gezeigten Höhe. Lasten folgen einem Zeitmodell: Fläche durch Hatchabstand und Geschwindigkeit, eine Pause je Vektor, Konturen, eine Pause je Stück. Die bestmögliche Zeit ist bewiesen, nicht geschätzt.',
  'Arranged plate': 'Platte, angeordnet',
  'as it is': 'aktuell',
  'At one height': 'Auf einer Höhe',
  'at the height shown': 'auf der gezeigten Höhe',
  'Author and reviewer are one name: nobody else has looked at this plate.':
    'Verfasser und Prüfer tragen denselben Namen: niemand sonst hat diese Platte gesehen.',
  'Begin revision A': 'Revision A beginnen',
  'begin revision A': 'Revision A beginnen',
  'black on white': 'schwarz auf weiß',
  Bodies: 'Körper',
  'build time': 'Bauzeit',
  Calendar: 'Kalender',
  'Check {name}{inRow}': '{name} prüfen{inRow}',
  Close: 'Schließen',
  'Columns by heading, English or German (id or Nr, shape or Form, x, y, turn, laser, seams, time factor; units as “x mm” or “x in”), else in this order. An empty cell leaves a value as it is; “-” takes a pin away.':
    'Spalten nach Überschrift, englisch oder deutsch (id oder Nr, shape oder Form, x, y, turn, laser, seams, time factor; Einheiten als „x mm“ oder „x in“), sonst in dieser Reihenfolge. Eine leere Zelle lässt den Wert, wie er ist; „-“ löst die feste Zuweisung.',
  Commands: 'Befehle',
  'Condensate and filter residue of reactive alloys can ignite in air hours later; inert gas displaces oxygen; platform and parts stay hot. A service event in unattended hours is a fault to resolve, never to skip.':
    'Kondensat und Filterrückstände reaktiver Legierungen können sich an Luft noch Stunden später entzünden; Schutzgas verdrängt Sauerstoff; Bauplattform und Teile bleiben heiß. Eine Wartung in unbesetzten Stunden ist ein Fehler, der behoben und nie übergangen wird.',
  'cut at': 'geschnitten bei',
  'dark ground': 'dunkler Hintergrund',
  date: 'Datum',
  'Draw a part': 'Teil zeichnen',
  'Each layer with area and load of every laser, to hold against what slicing reports.':
    'Jede Schicht mit Fläche und Last jedes Lasers, zum Vergleich mit dem Slicing.',
  'Each part where it stands, made of its sections: to check places, not to build from.':
    'Jedes Teil, wo es steht, aus seinen Schnitten: um Plätze zu prüfen, nicht um daraus zu bauen.',
  'Each part with its place, its lasers and the heights at which each exposes it.':
    'Jedes Teil mit Ort, Lasern und den Höhen, auf denen jeder es belichtet.',
  Edit: 'Bearbeiten',
  Elevation: 'Vorderansicht',
  ELEVATION: 'VORDERANSICHT',
  'Evenplate divides the platform of a multi-laser metal powder bed machine among its lasers and shows what each division costs in time, seams and hours. Everything is computed in this browser; nothing leaves it.':
    'Evenplate teilt die Bauplattform einer Mehrlaser-Maschine für Metallpulver unter ihren Lasern auf und zeigt, was jede Aufteilung an Zeit, Nähten und Stunden kostet. Alles wird in diesem Browser gerechnet; nichts verlässt ihn.',
  'Every figure of the readout says what it means when the pointer rests on it or the Tab key reaches it. Fields read “25,4 mm”, “1 in” and “1/4 in”; Enter commits, Escape restores, the arrow keys step. The wheel zooms at the pointer; Shift adds to the selection; Alt drags a copy; Ctrl drags without snapping.':
    'Jeder Wert der Anzeige erklärt sich, wenn der Zeiger darauf ruht oder die Tabulatortaste ihn erreicht. Felder lesen „25,4 mm“, „1 in“ und „1/4 in“; Eingabe übernimmt, Escape stellt wieder her, die Pfeiltasten zählen weiter. Das Rad zoomt am Zeiger; Umschalt erweitert die Auswahl; Alt zieht eine Kopie; Strg zieht ohne Fang.',
  'exposure here': 'Belichtung hier',
  'Files go to the browser’s downloads.': 'Dateien gehen zu den Downloads des Browsers.',
  'Four layouts are the most.': 'Mehr als vier Layouts gehen nicht.',
  'from z {from} mm: {zoning}': 'ab z {from} mm: {zoning}',
  'Hand over files': 'Dateien übergeben',
  'Height at which all are cut': 'Höhe, auf der alle geschnitten werden',
  Help: 'Hilfe',
  holds: 'enthält',
  'imbalance here': 'Ungleichgewicht hier',
  'It takes the place of the layout with checksum {checksum}: open that one and mark it as superseded.':
    'Sie tritt an die Stelle des Layouts mit Prüfsumme {checksum}: dieses öffnen und als ersetzt vermerken.',
  'Kinds of entries': 'Arten von Einträgen',
  Layers: 'Schichten',
  Library: 'Bibliothek',
  'light ground': 'heller Hintergrund',
  'Link of this plate': 'Link dieser Platte',
  'Lists and settings': 'Listen und Einstellungen',
  'Loading …': 'Lädt …',
  Machine: 'Maschine',
  'machine, process, parts, zones and calendar, whole; the height of {height} mm and the part of the plan on screen':
    'Maschine, Prozess, Teile, Zonen und Kalender, vollständig; die Höhe {height} mm und den gezeigten Ausschnitt der Draufsicht',
  'machine, process, parts, zones and calendar, whole; the height of {height} mm and the whole plan':
    'Maschine, Prozess, Teile, Zonen und Kalender, vollständig; die Höhe {height} mm und die ganze Draufsicht',
  'Mark as reviewed': 'Als geprüft vermerken',
  'Mark as superseded': 'Als ersetzt vermerken',
  Messages: 'Meldungen',
  'Names are recorded as they are typed: a page cannot prove who typed them. Where that matters, sign the printed sheet.':
    'Namen werden festgehalten, wie sie getippt sind: eine Seite kann nicht beweisen, wer sie getippt hat. Wo es darauf ankommt, das gedruckte Blatt unterschreiben.',
  'Names carry the layout, its revision and its checksum. Hours and loads are estimates. Nothing leaves this computer but by your own hand.':
    'Namen tragen Layout, Revision und Prüfsumme. Stunden und Lasten sind Schätzungen. Nichts verlässt diesen Rechner, außer von eigener Hand.',
  'No closed outline was found in {name}; nothing can be placed.':
    'In {name} wurde kein geschlossener Umriss gefunden; nichts kann gesetzt werden.',
  'No command of that name.': 'Kein Befehl dieses Namens.',
};
