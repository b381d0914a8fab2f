/** German of the screens: import check. */
export const SCREENS_IMPORT_CHECK = {
  ', {turn} of {last}': ', {turn} von {last}',
  ', first at x {x}, y {y} mm': ', zuerst bei x {x}, y {y} mm',
  ', narrowest gap {gap}': ', engste Lücke {gap}',
  'as the file says': 'wie die Datei sagt',
  'copies of each': 'Kopien von jedem',
  'dash-dot: left out': 'Strichpunkt: weggelassen',
  'dash-dot: left out; dots: ends that do not meet':
    'Strichpunkt: weggelassen; Punkte: Enden, die sich nicht treffen',
  'distance of ends': 'Abstand der Enden',
  'height of all': 'Höhe aller',
  'Left out': 'Weggelassen',
  'Lines without a fill are no area: to have one taken, fill it in the drawing program.':
    'Linien ohne Füllung sind keine Fläche: soll eine gelten, im Zeichenprogramm füllen.',
  'mirror front and back': 'vorn und hinten spiegeln',
  'mirror left and right': 'links und rechts spiegeln',
  'No unit in the file: taken as px, 1/96 in. Compare the size with the part and choose.':
    'Keine Einheit in der Datei: als px gelesen, 1/96 in. Größe mit dem Teil vergleichen und wählen.',
  'not said, taken as px': 'keine, also px',
  'Nothing was left out.': 'Nichts wurde weggelassen.',
  'The drawing does not say its unit. Compare the size with the part and choose.':
    'Die Zeichnung nennt ihre Einheit nicht. Größe mit dem Teil vergleichen und wählen.',
  '{count} [hole|holes]': '{count} [Loch|Löcher]',
  '{count} more outlines land with the height and copies of all.':
    '{count} weitere Umrisse kommen mit der Höhe und den Kopien aller.',
  '{count} × [chain whose ends do not meet|chains whose ends do not meet]':
    '{count} × [Kette, deren Enden sich nicht treffen|Ketten, deren Enden sich nicht treffen]',
  '{count} × [clip path or mask, not applied|clip paths or masks, not applied]':
    '{count} × [Schnittpfad oder Maske, nicht angewandt|Schnittpfade oder Masken, nicht angewandt]',
  '{count} × [dimension|dimensions]': '{count} × [Bemaßung|Bemaßungen]',
  '{count} × [face or mesh|faces and meshes]': '{count} × [Fläche oder Netz|Flächen und Netze]',
  '{count} × [hatching|hatchings]': '{count} × [Schraffur|Schraffuren]',
  '{count} × [image|images]': '{count} × [Bild|Bilder]',
  '{count} × [invisible object|invisible objects]': '{count} × [unsichtbares Objekt|unsichtbare Objekte]',
  '{count} × [line drawn twice|lines drawn twice]':
    '{count} × [doppelt gezeichnete Linie|doppelt gezeichnete Linien]',
  '{count} × [line left over where three or more meet|lines left over where three or more meet]':
    '{count} × [Linie übrig, wo sich drei oder mehr treffen|Linien übrig, wo sich drei oder mehr treffen]',
  '{count} × [line without a fill|lines without a fill]':
    '{count} × [Linie ohne Füllung|Linien ohne Füllung]',
  '{count} × [object not parallel to the drawing|objects not parallel to the drawing]':
    '{count} × [Objekt, nicht parallel zur Zeichnung|Objekte, nicht parallel zur Zeichnung]',
  '{count} × [object of a printed sheet|objects of a printed sheet]':
    '{count} × [Objekt eines Druckblatts|Objekte eines Druckblatts]',
  '{count} × [object on a frozen layer|objects on a frozen layer]':
    '{count} × [Objekt auf einer gefrorenen Ebene|Objekte auf einer gefrorenen Ebene]',
  '{count} × [object on a layer that is off|objects on a layer that is off]':
    '{count} × [Objekt auf einer ausgeschalteten Ebene|Objekte auf einer ausgeschalteten Ebene]',
  '{count} × [object that cannot be read|objects that cannot be read]':
    '{count} × [unlesbares Objekt|unlesbare Objekte]',
  '{count} × [object that holds no outline|objects that hold no outline]':
    '{count} × [Objekt ohne Umriss|Objekte ohne Umriss]',
  '{count} × [object that reaches further than 100 m from the origin|objects that reach further than 100 m from the origin]':
    '{count} × [Objekt, das weiter als 100 m vom Ursprung reicht|Objekte, die weiter als 100 m vom Ursprung reichen]',
  '{count} × [outline that encloses nothing|outlines that enclose nothing]':
    '{count} × [Umriss, der nichts umschließt|Umrisse, die nichts umschließen]',
  '{count} × [point|points]': '{count} × [Punkt|Punkte]',
  '{count} × [reference to something the file does not hold|references to something the file does not hold]':
    '{count} × [Verweis auf etwas, das die Datei nicht enthält|Verweise auf etwas, das die Datei nicht enthält]',
  '{count} × [text|texts]': '{count} × [Text|Texte]',
  '{placed} outlines, {left} lines left out': '{placed} Umrisse, {left} Linien weggelassen',
  '{unit}, as the {kind} says': '{unit}, wie die {kind} sagt',
  '{unit}, chosen here': '{unit}, hier gewählt',
};
