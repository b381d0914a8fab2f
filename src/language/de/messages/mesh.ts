/** German of messages: mesh. */
export const MESSAGES_MESH = {
  '[It is|They are] followed in pairs; compare a section there with the part.':
    '[Sie wird|Sie werden] paarweise verfolgt; einen Schnitt dort mit dem Teil vergleichen.',
  '[It is|They are] left out.': '[Es bleibt|Sie bleiben] weg.',
  '[It is|They are] turned to fit.': '[Es wurde|Sie wurden] passend gewendet.',
  '[It is|They are] turned; a shell inside another one counts as a hollow.':
    '[Sie wurde|Sie wurden] gewendet; eine Hülle in einer anderen gilt als Hohlraum.',
  'A 3MF is a ZIP package; save it again without encryption.':
    'Ein 3MF ist ein ZIP-Paket; noch einmal ohne Verschlüsselung speichern.',
  'A 3MF names its model part in _rels/.rels.': 'Ein 3MF nennt sein Modell in _rels/.rels.',
  'A coordinate is {found} at {where}.': 'Eine Koordinate ist {found}, Ort: {where}.',
  'A mesh file may hold up to {limit} MB; save it in binary form or with fewer triangles.':
    'Eine Netzdatei darf bis zu {limit} MB enthalten; binär oder mit weniger Dreiecken speichern.',
  'A mesh has to be closed enough to be cut, an outline has to be closed.':
    'Ein Netz muss dicht genug zum Schneiden sein, ein Umriss geschlossen.',
  'A mesh needs triangles that bound a part.': 'Ein Netz braucht Dreiecke, die ein Teil begrenzen.',
  'A part may have up to {limit}; choose thicker layers.':
    'Ein Teil darf bis zu {limit} haben; dickere Schichten wählen.',
  'A part may measure up to {limit} mm; check the unit.':
    'Ein Teil darf bis zu {limit} mm messen; Einheit prüfen.',
  'A part needs a length, a width and a height of at least 0.001 mm; check the unit.':
    'Ein Teil braucht Länge, Breite und Höhe von mindestens 0,001 mm; Einheit prüfen.',
  'Add it to the build if it is needed.': 'In den Baujob aufnehmen, wenn es gebraucht wird.',
  'Along {count} [edge|edges] two triangles cannot face the same way.':
    'An {count} [Kante|Kanten] können zwei Dreiecke nicht gleich gerichtet sein.',
  'An inner shell that faces inwards counts as a hole; powder stays inside.':
    'Eine innere, nach innen gerichtete Hülle gilt als Loch; Pulver bleibt darin.',
  'Check that the part is whole.': 'Prüfen, ob das Teil vollständig ist.',
  'Components may not lead back to their own object.':
    'Komponenten dürfen nicht zu ihrem eigenen Objekt zurückführen.',
  'Coordinates are finite numbers such as 12.5.': 'Koordinaten sind endliche Zahlen wie 12.5.',
  'Coordinates may reach up to {limit}; check the unit.':
    'Koordinaten dürfen bis {limit} reichen; Einheit prüfen.',
  'Cutting was cancelled at {done} %.': 'Das Schneiden wurde bei {done} % abgebrochen.',
  'Edges that were open only by rounding are closed; nothing needs to be done.':
    'Kanten, die nur durch Rundung offen waren, sind geschlossen; nichts ist zu tun.',
  'Each counts once; compare the volume with the part.':
    'Jedes zählt einmal; das Volumen mit dem des Teils vergleichen.',
  'Every facet is a triangle of three points.': 'Jede Facette ist ein Dreieck aus drei Punkten.',
  'In {count} [layer|layers] below the top nothing is solid.':
    'In {count} [Schicht|Schichten] unter der Oberkante ist nichts fest.',
  'In {count} [layer|layers] outlines do not close; the widest gap is {gap} mm.':
    'In {count} [Schicht|Schichten] schließen sich Umrisse nicht; die weiteste Lücke ist {gap} mm.',
  'Joining points that are so near closes the mesh.': 'So nahe Punkte zu verbinden schließt das Netz.',
  'Mend the mesh, or close wider gaps.': 'Das Netz reparieren oder weitere Lücken schließen.',
  'Meshes are read from STL and 3MF, outlines from SVG and DXF.':
    'Netze werden aus STL und 3MF gelesen, Umrisse aus SVG und DXF.',
  'Meshes are read from STL, binary or text, and from 3MF.':
    'Netze werden aus STL, binär oder als Text, und aus 3MF gelesen.',
  'Name a mesh (STL, 3MF) or outlines (SVG, DXF).': 'Ein Netz (STL, 3MF) oder Umrisse (SVG, DXF) nennen.',
  'Nothing of the mesh is solid at the middle of any layer of {layer} mm.':
    'In der Mitte keiner Schicht von {layer} mm ist etwas vom Netz massiv.',
  'Take thinner layers, or a mesh with a solid body.':
    'Dünnere Schichten nehmen, oder ein Netz mit einem Körper.',
  'No layer of the mesh has a closed section; the widest gap is {gap} mm.':
    'Keine Schicht des Netzes hat einen geschlossenen Schnitt; die weiteste Lücke ist {gap} mm.',
  'Open it again; a mesh of fewer triangles takes less memory.':
    'Noch einmal öffnen; ein Netz aus weniger Dreiecken braucht weniger Speicher.',
  'Parts that stand apart over height cannot be built as one.':
    'Teile, die über die Höhe getrennt sind, können nicht als eines gebaut werden.',
  'Points along open edges lie {found} mm apart.': 'Punkte an offenen Kanten liegen {found} mm auseinander.',
  'Save it again in the program it came from.': 'In dem Programm, aus dem es stammt, noch einmal speichern.',
  'Save it again or copy it again as a whole.': 'Noch einmal speichern oder noch einmal ganz kopieren.',
  'Save it again, best in binary form.': 'Noch einmal speichern, am besten binär.',
  'Save it as a model if it is a part.': 'Als Modell speichern, wenn es ein Teil ist.',
  'Save it as a solid if it is a part.': 'Als Volumenkörper speichern, wenn es ein Teil ist.',
  'Save it without; accepted: core, materials and production.':
    'Ohne sie speichern; angenommen werden Core, Materials und Production.',
  'Save the part with fewer of them.': 'Das Teil mit weniger davon speichern.',
  'Sections close over gaps up to {gap} mm; wider ones are left out of their layers.':
    'Schnitte schließen sich über Lücken bis {gap} mm; was weiter klafft, fehlt in seinen Schichten.',
  'Supports are made later.': 'Stützen entstehen später.',
  'The 3MF cannot be unpacked: {detail}.': 'Das 3MF lässt sich nicht entpacken: {detail}.',
  'The 3MF is broken in {part}: {detail}.': 'Das 3MF ist in {part} fehlerhaft: {detail}.',
  'The 3MF requires the extension {found}.': 'Das 3MF verlangt die Erweiterung {found}.',
  'The file holds too much: more than {limit} {what}.':
    'Die Datei enthält zu viel, nämlich mehr als {limit} {what}.',
  'The file is cut off: {detail}.': 'Die Datei ist abgeschnitten: {detail}.',
  'The mesh could not be worked on: {detail}.': 'Das Netz konnte nicht bearbeitet werden: {detail}.',
  'The mesh measures {found} mm.': 'Das Netz misst {found} mm.',
  'The mesh measures {found} mm; it is flat.': 'Das Netz misst {found} mm; es ist flach.',
  'The mesh would make {found} {what}.': 'Das Netz ergäbe {found} {what}.',
  'The object {id} of the 3MF contains itself.': 'Das Objekt {id} des 3MF enthält sich selbst.',
  'The package names no 3D model: {detail}.': 'Das Paket nennt kein 3D-Modell: {detail}.',
  'The STL is broken: line {line} holds “{found}” where “{accepted}” is expected.':
    'Das STL ist fehlerhaft: Zeile {line} enthält „{found}“, erwartet wird „{accepted}“.',
  'The STL is broken: the facet at line {line} has {found} points.':
    'Das STL ist fehlerhaft: die Facette in Zeile {line} hat {found} Punkte.',
  'The surface has no inside there; mend the mesh.': 'Die Fläche hat dort kein Inneres; das Netz reparieren.',
  'Their sections are united; the volume counts the overlap twice.':
    'Ihre Schnitte werden vereinigt; das Volumen zählt die Überlappung doppelt.',
  'Use: npm run --silent section -- MESH-OR-OUTLINE [--layer MM] [--height MM]':
    'Aufruf: npm run --silent section -- MESH-OR-OUTLINE [--layer MM] [--height MM]',
  'What does not close is left out of [it|them]; close wider gaps or mend the mesh.':
    'Was sich nicht schließt, fehlt in [ihr|ihnen]; weitere Lücken schließen oder das Netz reparieren.',
  'The header names no triangles; {count} [stands|stand] behind it.':
    'Der Kopf nennt keine Dreiecke; dahinter [steht|stehen] {count}.',
  '“{what}” in the package could not be read; nothing to build leads to it.':
    '„{what}“ im Paket war nicht lesbar; nichts, was gebaut wird, führt dorthin.',
  'Check that nothing of the part is missing.': 'Prüfen, ob vom Teil nichts fehlt.',
  '{count} [byte|bytes] after the last triangle [was|were] not read.':
    '{count} [Byte|Bytes] nach dem letzten Dreieck [wurde|wurden] nicht gelesen.',
  '{count} [edge has|edges have] three or more triangles.':
    '{count} [Kante hat|Kanten haben] drei oder mehr Dreiecke.',
  '{count} [edge is|edges are] open.': '{count} [Kante ist|Kanten sind] offen.',
  '{count} [pair of shells overlaps|pairs of shells overlap].':
    '{count} [Paar|Paare] von Hüllen [überlappt|überlappen] sich.',
  '{count} [point|points] within {found} mm of another [was|were] joined to it.':
    '{count} [Punkt|Punkte] im Umkreis von {found} mm um einen anderen [wurde|wurden] mit ihm verbunden.',
  '{count} [shell bounds a hollow|shells bound hollows].':
    '{count} [Hülle begrenzt einen Hohlraum|Hüllen begrenzen Hohlräume].',
  '{count} [shell is|shells are] inside out.': '{count} [Hülle ist|Hüllen sind] umgestülpt.',
  '{count} [triangle faces|triangles face] the other way than [its|their] neighbours.':
    '{count} [Dreieck ist anders gerichtet als seine|Dreiecke sind anders gerichtet als ihre] Nachbarn.',
  '{count} [triangle has|triangles have] no area.': '{count} [Dreieck hat|Dreiecke haben] keine Fläche.',
  '{count} [triangle is|triangles are] there more than once.':
    '{count} [Dreieck ist|Dreiecke sind] mehrfach vorhanden.',
  '{count} × “{what}”: a surface without an inside.': '{count} × „{what}“: eine Fläche ohne Inneres.',
  '{count} × “{what}”: an object of type “other”.': '{count} × „{what}“: ein Objekt der Art „other“.',
  '{count} × “{what}”: not among the items to build.':
    '{count} × „{what}“: nicht unter dem, was gebaut wird.',
  '{count} × “{what}”: supports.': '{count} × „{what}“: Stützen.',
  '{count} × “{what}”: without triangles.': '{count} × „{what}“: ohne Dreiecke.',
  '“{name}” holds no shape: {detail}': '„{name}“ enthält keine Form: {detail}',
  '“{name}” holds no triangles.': '„{name}“ enthält keine Dreiecke.',
  '“{name}” is neither a mesh nor a drawing.': '„{name}“ ist weder Netz noch Zeichnung.',
  '“{name}” is neither STL nor 3MF.': '„{name}“ ist weder STL noch 3MF.',
};
