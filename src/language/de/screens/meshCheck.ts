/** German of the screens: mesh check. */
export const SCREENS_MESH_CHECK = {
  '; the widest gap is {value} mm': '; die weiteste Lücke ist {value} mm',
  'about x': 'um x',
  'above: {x} × {y}': 'oben: {x} × {y}',
  'as in the file': 'wie in der Datei',
  'Cancel cutting': 'Schneiden abbrechen',
  'Checking the mesh': 'Netz wird geprüft',
  'Checking {body}': '{body} wird geprüft',
  'Cut into {count} [layer|layers] of {layer} mm': 'In {count} [Schicht|Schichten] von {layer} mm schneiden',
  'Cutting the mesh': 'Netz wird geschnitten',
  'Cutting {body}: layer {layer} of {layers}': '{body} wird geschnitten: Schicht {layer} von {layers}',
  'Fits the machine: {height}, {foot}.': 'Passt in die Maschine: {height}, {foot}.',
  'footprint {x} × {y} of {width} × {depth}': 'Grundriss {x} × {y} von {width} × {depth}',
  'from above': 'von oben',
  'from the front': 'von vorn',
  'from the front right': 'von vorn rechts',
  'front: {x}, {z} high': 'vorn: {x}, {z} hoch',
  gap: 'Lücke',
  'height {z} of {buildHeight}': 'Höhe {z} von {buildHeight}',
  'in the picture': 'im Bild',
  'It is too high and too large: {height}, {foot}.': 'Zu hoch und zu groß: {height}, {foot}.',
  'It is too high: {height}, {foot}.': 'Zu hoch: {height}, {foot}.',
  'It is too large: {height}, {foot}.': 'Zu groß: {height}, {foot}.',
  'join points {width} apart': 'Punkte verbinden, Abstand {width}',
  'layer {layers} is empty at its middle: the slab below reaches the top':
    'Schicht {layers} ist in ihrer Mitte leer: der Abschnitt darunter reicht bis oben',
  'layer {layer}': 'Schicht {layer}',
  'layers {from} to {to}': 'Schichten {from} bis {to}',
  'parts stand where the file places them': 'Teile stehen, wo die Datei sie hinstellt',
  'The file measures from elsewhere: the arrangement stands in the middle of the platform.':
    'Die Datei misst von anderswo: die Anordnung steht in der Mitte der Bauplattform.',
  'The file measures from the front left corner of the platform.':
    'Die Datei misst von der Ecke vorn links der Bauplattform.',
  'The file measures from the middle of the platform.': 'Die Datei misst von der Mitte der Bauplattform.',
  'The file places parts too far apart for a platform.':
    'Die Datei stellt Teile für eine Bauplattform zu weit auseinander.',
  'Turned bodies have no place in the file.': 'Gedrehte Körper haben in der Datei keinen Platz.',
  'no seams: each part keeps one laser': 'keine Nähte: jedes Teil behält einen Laser',
  obliquely: 'schräg',
  'Reading the mesh': 'Netz wird gelesen',
  'Reading, {percent}': 'Lesen, {percent}',
  show: 'zeigen',
  'slabs hold {volume}, {value} % of the mesh': 'Abschnitte enthalten {volume}, {value} % des Netzes',
  'slabs hold {volume}; the mesh is not watertight and has no volume to compare with':
    'Abschnitte enthalten {volume}; das Netz ist nicht wasserdicht und hat kein Volumen zum Vergleich',
  'The buttons turn what is seen; it then stands on its lowest point.':
    'Die Knöpfe drehen, was zu sehen ist; es steht dann auf seinem tiefsten Punkt.',
  'The sections hold for layers of {layer} mm. Where the process gets another thickness, cut the mesh again.':
    'Die Schnitte gelten für Schichten von {layer} mm. Bekommt der Prozess eine andere Dicke, das Netz neu schneiden.',
  'then y': 'dann y',
  'then z': 'dann z',
  'Turn by {deg} degrees about {axis}': 'Um {deg} Grad um {axis} drehen',
  'Turn what is seen by {deg}° about {axis}': 'Was zu sehen ist um {deg}° um {axis} drehen',
  'under 0.001 mm': 'unter 0,001 mm',
  'up to {width} mm': 'bis {width} mm',
  '{count} [layer|layers] equal to the one below, first in {layers}':
    '{count} [Schicht|Schichten] gleich der darunter, zuerst in {layers}',
  '{count} [layer|layers] with nothing solid, first {layers}':
    '{count} [Schicht|Schichten] ohne Material, zuerst {layers}',
  '{count} [layer|layers] with nothing solid: {layers}':
    '{count} [Schicht|Schichten] ohne Material: {layers}',
  '{count} [layer|layers] with open outlines, left out there{gap}':
    '{count} [Schicht|Schichten] mit offenen Umrissen, dort weggelassen{gap}',
  '{count} [layer|layers] with overlapping outlines, united':
    '{count} [Schicht|Schichten] mit überlappenden Umrissen, vereinigt',
  '{count} more bodies are placed as they are.': '{count} weitere Körper werden gesetzt, wie sie sind.',
  '{layers} are equal': '{layers} sind gleich',
  '{made}, not watertight': '{made}, nicht wasserdicht',
  '{made}, watertight, {value}': '{made}, wasserdicht, {value}',
  '{slabs} [slabs: slab|slabs] of {layers} [layers: layer|layers]':
    '{slabs} [slabs: Abschnitt|Abschnitte] aus {layers} [layers: Schicht|Schichten]',
  '{triangles} [triangles: triangle|triangles] in {shells} [shells: shell|shells]':
    '{triangles} [triangles: Dreieck|Dreiecke] in {shells} [shells: Hülle|Hüllen]',
  '{unit}, as the file says': '{unit}, wie die Datei sagt',
};
