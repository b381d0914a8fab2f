/** German of the panels: blade. */
export const PANELS_BLADE = {
  'A straight blade and sections as drawn; stroke, angle and lengths are common practice without a source. The machine maker’s instructions decide.':
    'Eine gerade Klinge und Schnitte wie gezeichnet; Hub, Winkel und Längen sind übliche Praxis ohne Quelle. Es entscheiden die Anweisungen des Maschinenherstellers.',
  'along the stroke from the centre, mm →': 'entlang des Hubs ab der Mitte, mm →',
  'at once': 'auf einmal',
  'before the last change; being computed: {percent} %':
    'vor der letzten Änderung; wird berechnet: {percent} %',
  'at {place}: {met}': 'bei {place}: {met}',
  'BLADE, LAYER {layer}': 'KLINGE, SCHICHT {layer}',
  'geometry only': 'reine Geometrie',
  'Length met by the blade along its stroke': 'Von der Klinge getroffene Länge entlang des Hubs',
  'meets most, {met}, from {height}': 'trifft am meisten, {met}, ab {height}',
  'meets {met} at most, at {at}': 'trifft höchstens {met}, bei {at}',
  'met, mm': 'getroffen, mm',
  'no side of {side} or more within {angle} of the blade’s line':
    'keine Seite ab {side} innerhalb {angle} der Klingenlinie',
  'OVER THE BUILD': 'ÜBER DEN BAUJOB',
  'rises by {rise}': 'steigt um {rise}',
  'rises most, by {rise}, from {height}; {part} adds {own}':
    'steigt am stärksten, um {rise}, ab {height}; {part} trägt {own} bei',
  'runs on to most sides from {height}: {sides}, {length} in all ({parts})':
    'trifft auf die meisten Seiten ab {height}: {sides}, zusammen {length} ({parts})',
  'The blade meets nothing: the plate is empty.': 'Die Klinge trifft nichts: die Platte ist leer.',
  'The blade over the whole build': 'Die Klinge über den ganzen Baujob',
  'Turn against the blade': 'Gegen die Klinge drehen',
  'Turn {part} by {angle}': '{part} um {angle} drehen',
  'Turned by {turn}, {part} by itself rises by {turned} at worst instead of {now}.':
    'Um {turn} gedreht steigt {part} allein höchstens um {turned} statt um {now}.',
  'within {value}': 'innerhalb {value}',
  'z {from} to {to}': 'z {from} bis {to}',
  '{count} [side|sides] of {side} or more within {angle} of the blade’s line, {length} in all':
    '{count} [Seite|Seiten] ab {side} innerhalb {angle} der Klingenlinie, zusammen {length}',
  '{list} and {more} more': '{list} und {more} weitere',
  '{rise} {within}, at {at}': '{rise} {within}, bei {at}',
  '{rise} {within}, at {at} on the way back': '{rise} {within}, bei {at} auf dem Rückweg',
};
