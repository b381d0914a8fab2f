/** German of messages: edit. */
export const MESSAGES_EDIT = {
  'A mirrored casting is another part: draw it, or open its own outline or mesh.':
    'Ein gespiegeltes Gussteil ist ein anderes Teil: zeichnen oder seinen eigenen Umriss oder sein eigenes Netz öffnen.',
  'Copy them again; nothing was pasted.': 'Noch einmal kopieren; nichts wurde eingefügt.',
  'It stays where it was. Turn it, widen the zone, or take another part away.':
    'Es bleibt, wo es war. Drehen, die Zone verbreitern oder ein anderes Teil wegnehmen.',
  'No laser is on that has a zone here: nothing was spread.':
    'Kein eingeschalteter Laser hat hier eine Zone: nichts wurde verteilt.',
  'No room for {parts}: no free place, as turned, in the zone of the laser that was to take it.':
    'Kein Platz für {parts}: gedreht, wie es ist, kein freier Ort in der Zone des Lasers, der es übernehmen sollte.',
  'Open it by “Paste a table of parts”.': 'Mit „Teiletabelle einfügen“ öffnen.',
  'Parts are pasted that were copied on a plate, in this window or another one.':
    'Eingefügt werden Teile, die auf einer Platte kopiert wurden, in diesem Fenster oder einem anderen.',
  'Pin them to a laser of this machine where that matters.':
    'Wo es darauf ankommt, einem Laser dieser Maschine fest zuweisen.',
  'Pins of {parts} name a laser that this machine does not have: they were lifted.':
    'Feste Zuweisungen von {parts} nennen einen Laser, den diese Maschine nicht hat: sie wurden aufgehoben.',
  'Places and turns are mirrored; the shape of {parts} is unlike its mirror image and stays as it is.':
    'Orte und Drehungen sind gespiegelt; die Form von {parts} gleicht ihrem Spiegelbild nicht und bleibt, wie sie ist.',
  'Press Ctrl+C instead.': 'Stattdessen Strg+C drücken.',
  'Press Ctrl+V instead.': 'Stattdessen Strg+V drücken.',
  'Save it as a file and open that, or copy parts on its plate.':
    'Als Datei speichern und öffnen oder die Teile auf seiner Platte kopieren.',
  'Select parts and copy them first.': 'Zuerst Teile auswählen und kopieren.',
  'Switch a laser on, or give it a zone.': 'Einen Laser einschalten oder ihm eine Zone geben.',
  'The clipboard holds a table, not parts copied on a plate.':
    'Die Zwischenablage enthält eine Tabelle, keine auf einer Platte kopierten Teile.',
  'The clipboard holds a whole layout, not parts.':
    'Die Zwischenablage enthält ein ganzes Layout, keine Teile.',
  'The clipboard holds no parts: “{found}”.': 'Die Zwischenablage enthält keine Teile: „{found}“.',
  'The clipboard holds no text, so there is nothing to paste.':
    'Die Zwischenablage enthält keinen Text, es gibt nichts einzufügen.',
  'The parts in the clipboard cannot be read: {detail}':
    'Die Teile in der Zwischenablage sind nicht lesbar: {detail}',
  'The parts in the clipboard have version {found}.':
    'Die Teile in der Zwischenablage haben Version {found}.',
  'This browser did not take the parts into the clipboard.':
    'Dieser Browser hat die Teile nicht in die Zwischenablage übernommen.',
  'This browser does not let a menu read the clipboard.':
    'Dieser Browser lässt ein Menü die Zwischenablage nicht lesen.',
  'This program reads version {newest}; load the page again in both windows.':
    'Dieses Programm liest Version {newest}; die Seite in beiden Fenstern neu laden.',
};
