/** German of messages: outline. */
export const MESSAGES_OUTLINE = {
  'An outline file may hold up to {limit} MB; save only the outlines that are needed.':
    'Eine Umrissdatei darf bis zu {limit} MB enthalten; nur die nötigen Umrisse speichern.',
  'An outline file needs closed shapes: filled ones in an SVG, lines and arcs that meet in a DXF.':
    'Eine Umrissdatei braucht geschlossene Formen: gefüllte im SVG, Linien und Bögen, die sich treffen, im DXF.',
  'An SVG has to be well-formed XML; open it in the program it came from and save it again.':
    'Ein SVG muss wohlgeformtes XML sein; in dem Programm, aus dem es stammt, öffnen und noch einmal speichern.',
  'Check the unit, or leave [it|them] out.': 'Einheit prüfen oder [sie|sie alle] weglassen.',
  'Check the unit, or move it to the origin of the drawing.':
    'Einheit prüfen oder zum Ursprung der Zeichnung verschieben.',
  'Close them in the drawing, or let ends meet over a wider gap.':
    'In der Zeichnung schließen oder Enden über eine größere Lücke verbinden lassen.',
  'Compare [its area|their areas] with the drawing.':
    '[Seine Fläche|Ihre Flächen] mit der Zeichnung vergleichen.',
  'Compare [it|them] with the drawing; give [it|them] no fill to leave [it|them] out.':
    'Mit der Zeichnung vergleichen; [ihm|ihnen] die Füllung nehmen, um [ihn|sie] wegzulassen.',
  'Compare the size with the part and choose the unit.':
    'Die Größe mit dem Teil vergleichen und die Einheit wählen.',
  'Convert lettering to outlines if it belongs to the part.':
    'Schrift in Umrisse umwandeln, wenn sie zum Teil gehört.',
  'Cut the shape itself in the drawing.': 'Die Form selbst in der Zeichnung zuschneiden.',
  'Draw it anew or save the drawing again.': 'Neu zeichnen oder die Zeichnung noch einmal speichern.',
  'Draw outlines in the xy plane.': 'Umrisse in der xy-Ebene zeichnen.',
  'Each becomes a part of its own; unite them in the drawing if they are one.':
    'Jede wird ein eigenes Teil; in der Zeichnung vereinigen, wenn sie eines sind.',
  'Fetch or save the file again.': 'Die Datei noch einmal holen oder speichern.',
  'Its outline is read if it is drawn as lines as well.':
    'Ihr Umriss wird gelesen, wenn er auch als Linien gezeichnet ist.',
  'Lines of a DXF come in pairs, a whole number and a value; save the drawing again.':
    'Zeilen eines DXF stehen paarweise, ganze Zahl und Wert; die Zeichnung noch einmal speichern.',
  'No unit in the file: taken as px, 1/96 in.': 'Keine Einheit in der Datei: als px gelesen, 1/96 in.',
  'Numbers are written as 12.5; save the drawing again.':
    'Zahlen schreiben sich wie 12.5; die Zeichnung noch einmal speichern.',
  'Only closed shapes become parts.': 'Nur geschlossene Formen werden Teile.',
  'Only drawn outlines are read.': 'Nur gezeichnete Umrisse werden gelesen.',
  'Only lines, arcs, curves and filled shapes are read.':
    'Nur Linien, Bögen, Kurven und gefüllte Formen werden gelesen.',
  'Outlines are read from SVG and from DXF in text form.':
    'Umrisse werden aus SVG und aus DXF in Textform gelesen.',
  'Outlines are read from the model.': 'Umrisse werden aus dem Modellbereich gelesen.',
  'Remove lines that belong to no outline.': 'Linien entfernen, die zu keinem Umriss gehören.',
  'Save a section or a view of lines and arcs.':
    'Einen Schnitt oder eine Ansicht aus Linien und Bögen speichern.',
  'Save it as an ASCII DXF.': 'Als ASCII-DXF speichern.',
  'Save it as plain SVG without a document type definition.':
    'Als einfaches SVG ohne Dokumenttypdefinition speichern.',
  'Save only the outlines that are needed, without hatching and repeated blocks.':
    'Nur die nötigen Umrisse speichern, ohne Schraffur und wiederholte Blöcke.',
  'Save the drawing with everything it refers to.': 'Die Zeichnung mit allem speichern, worauf sie verweist.',
  'Show it in the drawing if it is an outline.': 'In der Zeichnung einblenden, wenn es ein Umriss ist.',
  'Switch the layer on if it is needed.': 'Den Layer einschalten, wenn er gebraucht wird.',
  'Thaw the layer if it is needed.': 'Den Layer tauen, wenn er gebraucht wird.',
  'The drawing holds no outlines.': 'Die Zeichnung enthält keine Umrisse.',
  'The drawing holds too much: more than {found} lines, curves or points.':
    'Die Zeichnung enthält zu viel: mehr als {found} Linien, Kurven oder Punkte.',
  'The drawing nests its groups more than {limit} deep.':
    'Die Zeichnung schachtelt ihre Gruppen tiefer als {limit}.',
  'The DXF is broken: line {line} holds “{found}” where a group code is expected.':
    'Das DXF ist fehlerhaft: Zeile {line} enthält „{found}“, erwartet wird ein Gruppencode.',
  'The DXF is broken: line {line} holds “{found}” where group {code} needs a number.':
    'Das DXF ist fehlerhaft: Zeile {line} enthält „{found}“, Gruppe {code} braucht aber eine Zahl.',
  'The DXF is cut off: it ends in the middle of a section at line {line}.':
    'Das DXF ist abgeschnitten: es endet mitten in einem Abschnitt bei Zeile {line}.',
  'The DXF is in binary form.': 'Das DXF liegt in Binärform vor.',
  'The file is XML, but its outermost element is “{found}”.':
    'Die Datei ist XML, ihr äußerstes Element aber „{found}“.',
  'The outermost element of an SVG is “svg”.': 'Das äußerste Element eines SVG ist „svg“.',
  'The SVG defines entities of its own at line {line}.': 'Das SVG legt in Zeile {line} eigene Entities fest.',
  'The SVG is broken at line {line}, column {column}: {detail}.':
    'Das SVG ist in Zeile {line}, Spalte {column} fehlerhaft: {detail}.',
  'To have [it|them] taken, fill [it|them] in the drawing program.':
    'Um sie zu übernehmen, [sie|sie alle] im Zeichenprogramm füllen.',
  'Ungroup it and save it again.': 'Gruppierung auflösen und noch einmal speichern.',
  '{count} [outline crossed itself and was|outlines crossed themselves and were] put right.':
    '{count} [Umriss schnitt sich selbst und wurde|Umrisse schnitten sich selbst und wurden] berichtigt.',
  '{count} [pair of shapes overlaps|pairs of shapes overlap], first “{first}” and “{second}”.':
    '{count} [Paar|Paare] von Formen [überlappt|überlappen] sich, zuerst „{first}“ und „{second}“.',
  '{count} [shape measures|shapes measure] less than {limit} mm in width or depth, first “{first}”.':
    '{count} [Form misst|Formen messen] weniger als {limit} mm in Breite oder Tiefe, zuerst „{first}“.',
  '{count} open [outline was|outlines were] closed as [its fill shows|their fills show].':
    '{count} [offener Umriss wurde geschlossen, wie seine|offene Umrisse wurden geschlossen, wie ihre] Füllung zeigt.',
  '{count} × on the layer “{what}”, which is frozen.': '{count} × auf dem Layer „{what}“, der gefroren ist.',
  '{count} × on the layer “{what}”, which is off.': '{count} × auf dem Layer „{what}“, der aus ist.',
  '{count} × {what}: [a dimension|dimensions].': '{count} × {what}: [ein Maß|Maße].',
  '{count} × {what}: [a point|points].': '{count} × {what}: [ein Punkt|Punkte].',
  '{count} × {what}: [an image|images].': '{count} × {what}: [ein Bild|Bilder].',
  '{count} × {what}: [holds|hold] no outline.': '{count} × {what}: [enthält|enthalten] keinen Umriss.',
  '{count} × {what}: faces or solids.': '{count} × {what}: Flächen oder Volumenkörper.',
  '{count} × {what}: hatching.': '{count} × {what}: Schraffur.',
  '{count} × {what}: on a sheet for printing.': '{count} × {what}: auf einem Blatt zum Drucken.',
  '{count} × {what}: text.': '{count} × {what}: Text.',
  '{count} × {what}: tilted against the plane of the drawing.':
    '{count} × {what}: gegen die Zeichenebene geneigt.',
  '{count} × “{what}”: [a line|lines] left over where three or more meet.':
    '{count} × „{what}“: [eine Linie|Linien], übrig, wo drei oder mehr sich treffen.',
  '{count} × “{what}”: [a line|lines] without a fill.':
    '{count} × „{what}“: [eine Linie|Linien] ohne Füllung.',
  '{count} × “{what}”: [encloses|enclose] no area.':
    '{count} × „{what}“: [umschließt|umschließen] keine Fläche.',
  '{count} × “{what}”: [reaches|reach] further than 100 m from the origin.':
    '{count} × „{what}“: [reicht|reichen] weiter als 100 m vom Ursprung.',
  '{count} × “{what}”: drawn twice; one was kept.':
    '{count} × „{what}“: doppelt gezeichnet; einmal behalten.',
  '{count} × “{what}”: invisible.': '{count} × „{what}“: unsichtbar.',
  '{count} × “{what}”: its clip path or mask was not applied.':
    '{count} × „{what}“: Beschneidung oder Maske wurde nicht angewendet.',
  '{count} × “{what}”: its data cannot be read.': '{count} × „{what}“: die Daten sind nicht lesbar.',
  '{count} × “{what}”: lines that do not close; the narrowest gap is {gap}.':
    '{count} × „{what}“: Linien, die sich nicht schließen; die engste Lücke ist {gap}.',
  '{count} × “{what}”: not in the file, or inside itself.':
    '{count} × „{what}“: nicht in der Datei oder in sich selbst enthalten.',
  '“{name}” is neither SVG nor DXF.': '„{name}“ ist weder SVG noch DXF.',
};
