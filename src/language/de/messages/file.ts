/** German of src/layout/messages/fileMessages.ts. */
export const FILE_MESSAGES = {
  '“{found}” is not a length.': '„{found}“ ist keine Länge.',
  'Type a number with or without a unit, or a sum: 25.4, 25,4 mm, 1 1/2 in, 3+2 cm.':
    'Eine Zahl mit oder ohne Einheit oder eine Summe eingeben: 25,4; 25,4 mm; 1 1/2 in; 3+2 cm.',
  '“{found}” is longer than 100 m.': '„{found}“ ist länger als 100 m.',
  'Lengths go up to 100 000 mm.': 'Längen gehen bis 100 000 mm.',
  '“{found}” is not an angle.': '„{found}“ ist kein Winkel.',
  'Type a number of degrees or a sum, such as 22.5° or 30+15.':
    'Gradzahl oder Summe eingeben, etwa 22,5° oder 30+15.',
  '“{found}” is more than a hundred turns.': '„{found}“ ist mehr als hundert Umdrehungen.',
  'Angles go from −36 000° to 36 000°.': 'Winkel gehen von −36 000° bis 36 000°.',
  '“{found}” is not a number.': '„{found}“ ist keine Zahl.',
  'Type a number or a sum, such as 1.25 or 1,25+2.':
    'Eine Zahl oder eine Summe eingeben, etwa 1,25 oder 1,25+2.',
  '“{found}”: exponents are not read.': '„{found}“: Exponenten werden nicht gelesen.',
  'Type all digits, such as 0.001 or 1500.': 'Alle Ziffern eingeben, etwa 0,001 oder 1500.',
  '{what}: “{found}” is out of range.': '{what}: „{found}“ liegt außerhalb des Bereichs.',
  'Accepted: {accepted}.': 'Erlaubt: {accepted}.',
  '{part} does not come to that distance from {other} on a straight way.':
    '{part} kommt auf geradem Weg nicht auf diesen Abstand zu {other}.',
  'Move it by hand, or type its x and y.': 'Von Hand verschieben oder x und y eingeben.',
  'Use: npm run --silent analyse -- FILE [--height MM]':
    'Aufruf: npm run --silent analyse -- FILE [--height MM]',
  'Name a layout file, that is JSON with "format": "evenplate-layout".':
    'Eine Layoutdatei nennen, also JSON mit "format": "evenplate-layout".',
  'There is no layer at a height of {found} mm.': 'In einer Höhe von {found} mm gibt es keine Schicht.',
  'Give a height from 0 to {top} mm, the top of the highest part.':
    'Eine Höhe von 0 bis {top} mm angeben, der Oberkante des höchsten Teils.',
  'A layout file may hold up to {limit} MB.': 'Eine Layoutdatei darf bis zu {limit} MB enthalten.',
  'The file saved now holds {found} MB and could not be opened again.':
    'Die eben gespeicherte Datei enthält {found} MB und ließe sich nicht wieder öffnen.',
  'A layout file may hold up to {limit} MB; cut meshes into thicker layers or save fewer shapes in one file.':
    'Eine Layoutdatei darf bis zu {limit} MB enthalten; Netze in dickere Schichten schneiden oder weniger Formen in einer Datei speichern.',
  'The file is not JSON: {detail}.': 'Die Datei ist kein JSON: {detail}.',
  'A layout file is JSON with "format": "evenplate-layout".':
    'Eine Layoutdatei ist JSON mit "format": "evenplate-layout".',
  'This is not a layout: the file holds {found}, not an object.':
    'Das ist kein Layout: die Datei enthält {found}, kein Objekt.',
  'A layout file is one JSON object with "format": "evenplate-layout".':
    'Eine Layoutdatei ist ein einzelnes JSON-Objekt mit "format": "evenplate-layout".',
  'This is not a layout: its "format" is {found}.': 'Das ist kein Layout: sein "format" ist {found}.',
  'A layout has "format": "evenplate-layout".': 'Ein Layout hat "format": "evenplate-layout".',
  "The layout's version is {found}.": 'Die Version des Layouts ist {found}.',
  'Versions are whole numbers from 1; this program reads up to {newest}.':
    'Versionen sind ganze Zahlen ab 1; dieses Programm liest bis {newest}.',
  'The layout has version {found}, made by a newer program.':
    'Das Layout hat Version {found}, von einem neueren Programm.',
  'This program reads versions up to {newest}; open it with a newer one.':
    'Dieses Programm liest Versionen bis {newest}; mit einem neueren öffnen.',
  'The layout has an unknown key {key} at {path}.':
    'Das Layout hat bei {path} den unbekannten Schlüssel {key}.',
  'Remove it or correct its spelling; the keys are listed in layout.schema.json.':
    'Entfernen oder Schreibweise berichtigen; die Schlüssel stehen in layout.schema.json.',
  'The key {key} stands twice in {path}, the second time at line {line}.':
    'Der Schlüssel {key} steht zweimal in {path}, das zweite Mal in Zeile {line}.',
  'A key may stand once; remove one of the two or give it another name.':
    'Ein Schlüssel darf einmal stehen; einen der beiden entfernen oder umbenennen.',
  'The layout lacks the key {key} at {path}.': 'Dem Layout fehlt bei {path} der Schlüssel {key}.',
  'Add it; the keys are listed in layout.schema.json.':
    'Ergänzen; die Schlüssel stehen in layout.schema.json.',
  '{path} is {found}.': 'Der Wert von {path} ist {found}.',
  'It has to be {accepted}.': 'Erwartet: {accepted}.',
  '{path} repeats the id "{id}".': '{path} wiederholt die Kennung "{id}".',
  'Every {kind} needs an id of its own.': 'Jede Kennung darf nur einmal stehen, hier: {kind}.',
  '{path} names the shape "{id}", which is not in "shapes".':
    '{path} nennt die Form "{id}", die nicht in "shapes" steht.',
  "Name one of the layout's shapes or add this one.":
    'Eine der Formen des Layouts nennen oder diese ergänzen.',
  '{path} names the laser "{id}", which the machine does not have.':
    '{path} nennt den Laser "{id}", den die Maschine nicht hat.',
  'The machine has {known}.': 'Die Maschine hat {known}.',
  '{path} lists {found} lasers for {zones} zones.': '{path} führt {found} Laser für {zones} Zonen auf.',
  'List one laser for every zone; a laser may repeat.':
    'Je Zone einen Laser aufführen; ein Laser darf mehrmals stehen.',
  '{path} is {found}, not above the value before it, {before}.':
    '{path} ist {found}, nicht größer als der Wert davor, {before}.',
  'Values here have to ascend.': 'Werte müssen hier aufsteigen.',
  '{path} has {found} different points.': '{path} hat {found} verschiedene Punkte.',
  'An outline needs at least three.': 'Ein Umriss braucht mindestens drei.',
  '{path} encloses no area.': '{path} umschließt keine Fläche.',
  'An outline has to enclose an area; its points may not all lie on one line.':
    'Ein Umriss muss eine Fläche umschließen; seine Punkte dürfen nicht alle auf einer Geraden liegen.',
  '{path} has no outline in any slab.': '{path} hat in keinem Abschnitt einen Umriss.',
  'A shape needs at least one outline.': 'Eine Form braucht mindestens einen Umriss.',
  'The outline of the drawn {what} crosses itself and is filled by the even-odd rule.':
    'Der gezeichnete Umriss ({what}) schneidet sich selbst und wird nach der Gerade-Ungerade-Regel gefüllt.',
  'Undo and draw it again where something else was meant.':
    'Rückgängig machen und neu zeichnen, wo anderes gemeint war.',
  'The outline drawn for a {what} encloses no area on the plate.':
    'Der gezeichnete Umriss ({what}) umschließt keine Fläche auf der Platte.',
  'Click at least three corners that do not lie on one line.':
    'Mindestens drei Ecken anklicken, die nicht auf einer Geraden liegen.',
  'The plate would hold {found} parts.': 'Die Platte hätte {found} Teile.',
  'A layout may hold up to {limit} parts.': 'Ein Layout darf bis zu {limit} Teile enthalten.',
  'The work saved in this browser cannot be opened: {detail}':
    'Die in diesem Browser gespeicherte Arbeit lässt sich nicht öffnen: {detail}',
  'It is kept aside, where the library (File, Library) lists it; the demo plate is open instead.':
    'Sie ist beiseitegelegt und steht in der Bibliothek (Datei, Bibliothek); offen ist dafür die Demo-Platte.',
  'the sections of its shapes are not in this browser any more.':
    'die Schnitte ihrer Formen sind nicht mehr in diesem Browser.',
  'Open the layout file instead.': 'Stattdessen die Layoutdatei öffnen.',
  'Something failed, and the plate as it is now could not be opened again: it is not written over what is saved.':
    'Etwas ist fehlgeschlagen, und die Platte ließe sich so nicht wieder öffnen: sie überschreibt das Gespeicherte nicht.',
  'Undo the last change; what was saved before is still there.':
    'Die letzte Änderung rückgängig machen; was vorher gespeichert war, ist noch da.',
  'This browser’s storage is full: changes are not kept over a reload.':
    'Der Speicher dieses Browsers ist voll: Änderungen überstehen kein Neuladen.',
  'Save the layout as a file.': 'Das Layout als Datei speichern.',
  'This browser gives the page no storage: changes are not kept over a reload.':
    'Dieser Browser gibt der Seite keinen Speicher: Änderungen überstehen kein Neuladen.',
  'Another window of this browser has saved its plate in this one’s place.':
    'Ein anderes Fenster dieses Browsers hat seine Platte anstelle dieser gespeichert.',
  'Save this plate in the library to keep it. The next change here takes the place back; the library (File, Library) then lists the other plate.':
    'Diese Platte in der Bibliothek speichern, um sie zu behalten. Die nächste Änderung hier holt den Platz zurück; die Bibliothek (Datei, Bibliothek) führt dann die andere Platte.',
  'The part of the page that saves the work could not be loaded: changes are not kept over a reload.':
    'Der Teil der Seite, der die Arbeit speichert, konnte nicht geladen werden: Änderungen überstehen kein Neuladen.',
  'Save the layout as a file, then load the page again.':
    'Das Layout als Datei speichern, dann die Seite neu laden.',
  'The window that was open failed and was closed: {detail}.':
    'Das offene Fenster ist fehlgeschlagen und wurde geschlossen: {detail}.',
  'The plate is as it was before; open it again, or load the page again if it fails once more.':
    'Die Platte ist, wie sie war; noch einmal öffnen oder, wenn es wieder fehlschlägt, die Seite neu laden.',
  '{name} cannot be read.': '{name} kann nicht gelesen werden.',
  'Check that it still exists and may be read, then open it again.':
    'Prüfen, ob die Datei noch da ist und gelesen werden darf, dann noch einmal öffnen.',
  '{name} is not a kind of file that can be opened here.':
    '{name} ist keine Dateiart, die sich hier öffnen lässt.',
  'Layout files (.json), outlines (.svg, .dxf) and meshes (.stl, .3mf) can.':
    'Es gehen Layoutdateien (.json), Umrisse (.svg, .dxf) und Netze (.stl, .3mf).',
  'The texts of the other language could not be loaded; the page stays as it is.':
    'Die Texte der anderen Sprache konnten nicht geladen werden; die Seite bleibt, wie sie ist.',
  'Choose the language again; where that does not help, load the page again.':
    'Die Sprache noch einmal wählen; hilft das nicht, die Seite neu laden.',
};
