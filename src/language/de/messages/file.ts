/** German of messages: file. */
export const MESSAGES_FILE = {
  'A key may stand once; remove one of the two or give it another name.':
    'Ein Schlüssel darf einmal stehen; einen der beiden entfernen oder umbenennen.',
  'A layout file is JSON with "format": "evenplate-layout".':
    'Eine Layoutdatei ist JSON mit "format": "evenplate-layout".',
  'A layout file is one JSON object with "format": "evenplate-layout".':
    'Eine Layoutdatei ist ein einzelnes JSON-Objekt mit "format": "evenplate-layout".',
  'A layout file may hold up to {limit} MB.': 'Eine Layoutdatei darf bis zu {limit} MB enthalten.',
  'A layout file may hold up to {limit} MB; cut meshes into thicker layers or save fewer shapes in one file.':
    'Eine Layoutdatei darf bis zu {limit} MB enthalten; Netze in dickere Schichten schneiden oder weniger Formen in einer Datei speichern.',
  'A layout has "format": "evenplate-layout".': 'Ein Layout hat "format": "evenplate-layout".',
  'A layout may hold up to {limit} parts.': 'Ein Layout darf bis zu {limit} Teile enthalten.',
  'A shape needs at least one outline.': 'Eine Form braucht mindestens einen Umriss.',
  'Accepted: {accepted}.': 'Erlaubt: {accepted}.',
  'Add it; the keys are listed in layout.schema.json.':
    'Ergänzen; die Schlüssel stehen in layout.schema.json.',
  'An outline has to enclose an area; its points may not all lie on one line.':
    'Ein Umriss muss eine Fläche umschließen; seine Punkte dürfen nicht alle auf einer Geraden liegen.',
  'An outline needs at least three.': 'Ein Umriss braucht mindestens drei.',
  'Angles go from −36 000° to 36 000°.': 'Winkel gehen von −36 000° bis 36 000°.',
  'Another window of this browser has saved its plate in this one’s place.':
    'Ein anderes Fenster dieses Browsers hat seine Platte anstelle dieser gespeichert.',
  'Check that it still exists and may be read, then open it again.':
    'Prüfen, ob die Datei noch da ist und gelesen werden darf, dann noch einmal öffnen.',
  'Choose the language again; where that does not help, load the page again.':
    'Die Sprache noch einmal wählen; hilft das nicht, die Seite neu laden.',
  'Click at least three corners that do not lie on one line.':
    'Mindestens drei Ecken anklicken, die nicht auf einer Geraden liegen.',
  'Every {kind} needs an id of its own.': 'Jede Kennung darf nur einmal stehen, hier: {kind}.',
  'Give a height from 0 to {top} mm, the top of the highest part.':
    'Eine Höhe von 0 bis {top} mm angeben, der Oberkante des höchsten Teils.',
  'It has to be {accepted}.': 'Erwartet: {accepted}.',
  'It is kept aside, where the library (File, Library) lists it; the demo plate is open instead.':
    'Sie ist beiseitegelegt und steht in der Bibliothek (Datei, Bibliothek); offen ist dafür die Demo-Platte.',
  'Layout files (.json), outlines (.svg, .dxf) and meshes (.stl, .3mf) can.':
    'Es gehen Layoutdateien (.json), Umrisse (.svg, .dxf) und Netze (.stl, .3mf).',
  'Lengths go up to 100 000 mm.': 'Längen gehen bis 100 000 mm.',
  'List one laser for every zone; a laser may repeat.':
    'Je Zone einen Laser aufführen; ein Laser darf mehrmals stehen.',
  'Move it by hand, or type its x and y.': 'Von Hand verschieben oder x und y eingeben.',
  'Name a layout file, that is JSON with "format": "evenplate-layout".':
    'Eine Layoutdatei nennen, also JSON mit "format": "evenplate-layout".',
  "Name one of the layout's shapes or add this one.":
    'Eine der Formen des Layouts nennen oder diese ergänzen.',
  'Open the layout file instead.': 'Stattdessen die Layoutdatei öffnen.',
  'Remove it or correct its spelling; the keys are listed in layout.schema.json.':
    'Entfernen oder Schreibweise berichtigen; die Schlüssel stehen in layout.schema.json.',
  'Save the layout as a file, then load the page again.':
    'Das Layout als Datei speichern, dann die Seite neu laden.',
  'Save the layout as a file.': 'Das Layout als Datei speichern.',
  'Save this plate in the library to keep it. The next change here takes the place back; the library (File, Library) then lists the other plate.':
    'Diese Platte in der Bibliothek speichern, um sie zu behalten. Die nächste Änderung hier holt den Platz zurück; die Bibliothek (Datei, Bibliothek) führt dann die andere Platte.',
  'Something failed, and the plate as it is now could not be opened again: it is not written over what is saved.':
    'Etwas ist fehlgeschlagen, und die Platte ließe sich so nicht wieder öffnen: sie überschreibt das Gespeicherte nicht.',
  'The file is not JSON: {detail}.': 'Die Datei ist kein JSON: {detail}.',
  'The file saved now holds {found} MB and could not be opened again.':
    'Die eben gespeicherte Datei enthält {found} MB und ließe sich nicht wieder öffnen.',
  'The key {key} stands twice in {path}, the second time at line {line}.':
    'Der Schlüssel {key} steht zweimal in {path}, das zweite Mal in Zeile {line}.',
  'The layout has an unknown key {key} at {path}.':
    'Das Layout hat bei {path} den unbekannten Schlüssel {key}.',
  'The layout has version {found}, made by a newer program.':
    'Das Layout hat Version {found}, von einem neueren Programm.',
  'The layout lacks the key {key} at {path}.': 'Dem Layout fehlt bei {path} der Schlüssel {key}.',
  "The layout's version is {found}.": 'Die Version des Layouts ist {found}.',
  'The machine has {known}.': 'Die Maschine hat {known}.',
  'The outline drawn for a {what} encloses no area on the plate.':
    'Der gezeichnete Umriss ({what}) umschließt keine Fläche auf der Platte.',
  'The outline of the drawn {what} crosses itself and is filled by the even-odd rule.':
    'Der gezeichnete Umriss ({what}) schneidet sich selbst und wird nach der Gerade-Ungerade-Regel gefüllt.',
  'The part of the page that saves the work could not be loaded: changes are not kept over a reload.':
    'Der Teil der Seite, der die Arbeit speichert, konnte nicht geladen werden: Änderungen überstehen kein Neuladen.',
  'The plate is as it was before; open it again, or load the page again if it fails once more.':
    'Die Platte ist, wie sie war; noch einmal öffnen oder, wenn es wieder fehlschlägt, die Seite neu laden.',
  'The plate would hold {found} parts.': 'Die Platte hätte {found} Teile.',
  'the sections of its shapes are not in this browser any more.':
    'die Schnitte ihrer Formen sind nicht mehr in diesem Browser.',
  'The texts of the other language could not be loaded; the page stays as it is.':
    'Die Texte der anderen Sprache konnten nicht geladen werden; die Seite bleibt, wie sie ist.',
  'The window that was open failed and was closed: {detail}.':
    'Das offene Fenster ist fehlgeschlagen und wurde geschlossen: {detail}.',
  'The work saved in this browser cannot be opened: {detail}':
    'Die in diesem Browser gespeicherte Arbeit lässt sich nicht öffnen: {detail}',
  'There is no layer at a height of {found} mm.': 'In einer Höhe von {found} mm gibt es keine Schicht.',
  'This browser gives the page no storage: changes are not kept over a reload.':
    'Dieser Browser gibt der Seite keinen Speicher: Änderungen überstehen kein Neuladen.',
  'This browser’s storage is full: changes are not kept over a reload.':
    'Der Speicher dieses Browsers ist voll: Änderungen überstehen kein Neuladen.',
  'This is not a layout: its "format" is {found}.': 'Das ist kein Layout: sein "format" ist {found}.',
  'This is not a layout: the file holds {found}, not an object.':
    'Das ist kein Layout: die Datei enthält {found}, kein Objekt.',
  'This program reads versions up to {newest}; open it with a newer one.':
    'Dieses Programm liest Versionen bis {newest}; mit einem neueren öffnen.',
  'Type a number of degrees or a sum, such as 22.5° or 30+15.':
    'Gradzahl oder Summe eingeben, etwa 22,5° oder 30+15.',
  'Type a number or a sum, such as 1.25 or 1,25+2.':
    'Eine Zahl oder eine Summe eingeben, etwa 1,25 oder 1,25+2.',
  'Type a number with or without a unit, or a sum: 25.4, 25,4 mm, 1 1/2 in, 3+2 cm.':
    'Eine Zahl mit oder ohne Einheit oder eine Summe eingeben: 25,4; 25,4 mm; 1 1/2 in; 3+2 cm.',
  'Type all digits, such as 0.001 or 1500.': 'Alle Ziffern eingeben, etwa 0,001 oder 1500.',
  'Undo and draw it again where something else was meant.':
    'Rückgängig machen und neu zeichnen, wo anderes gemeint war.',
  'Undo the last change; what was saved before is still there.':
    'Die letzte Änderung rückgängig machen; was vorher gespeichert war, ist noch da.',
  'Use: npm run --silent analyse -- FILE [--height MM]':
    'Aufruf: npm run --silent analyse -- FILE [--height MM]',
  'Values here have to ascend.': 'Werte müssen hier aufsteigen.',
  'Versions are whole numbers from 1; this program reads up to {newest}.':
    'Versionen sind ganze Zahlen ab 1; dieses Programm liest bis {newest}.',
  '{name} cannot be read.': '{name} kann nicht gelesen werden.',
  '{name} is not a kind of file that can be opened here.':
    '{name} ist keine Dateiart, die sich hier öffnen lässt.',
  '{part} does not come to that distance from {other} on a straight way.':
    '{part} kommt auf geradem Weg nicht auf diesen Abstand zu {other}.',
  '{path} encloses no area.': '{path} umschließt keine Fläche.',
  '{path} has no outline in any slab.': '{path} hat in keinem Abschnitt einen Umriss.',
  '{path} has {found} different points.': '{path} hat {found} verschiedene Punkte.',
  '{path} is {found}, not above the value before it, {before}.':
    '{path} ist {found}, nicht größer als der Wert davor, {before}.',
  '{path} is {found}.': 'Der Wert von {path} ist {found}.',
  '{path} lists {found} lasers for {zones} zones.': '{path} führt {found} Laser für {zones} Zonen auf.',
  '{path} names the laser "{id}", which the machine does not have.':
    '{path} nennt den Laser "{id}", den die Maschine nicht hat.',
  '{path} names the shape "{id}", which is not in "shapes".':
    '{path} nennt die Form "{id}", die nicht in "shapes" steht.',
  '{path} repeats the id "{id}".': '{path} wiederholt die Kennung "{id}".',
  '{what}: “{found}” is out of range.': '{what}: „{found}“ liegt außerhalb des Bereichs.',
  '“{found}” is longer than 100 m.': '„{found}“ ist länger als 100 m.',
  '“{found}” is more than a hundred turns.': '„{found}“ ist mehr als hundert Umdrehungen.',
  '“{found}” is not a length.': '„{found}“ ist keine Länge.',
  '“{found}” is not a number.': '„{found}“ ist keine Zahl.',
  '“{found}” is not an angle.': '„{found}“ ist kein Winkel.',
  '“{found}”: exponents are not read.': '„{found}“: Exponenten werden nicht gelesen.',
};
