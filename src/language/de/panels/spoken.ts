/** German of the panels: spoken. */
export const PANELS_SPOKEN = {
  ', selected': ', ausgewählt',
  ', turned {turn}°': ', gedreht {turn}°',
  'distance from the middle': 'Abstand von der Mitte',
  'Division without lines': 'Aufteilung ohne Linien',
  'no section at this height': 'kein Schnitt auf dieser Höhe',
  'Nothing is selected': 'Nichts ist ausgewählt',
  'Parts and zones of the plan': 'Teile und Zonen der Draufsicht',
  'Zone line {number} of {lines}, {axis} {c}': 'Zonenlinie {number} von {lines}, {axis} {c}',
  Zones: 'Zonen',
  '{count} parts selected; {words}': '{count} Teile ausgewählt; {words}',
  '{id}: off': '{id}: aus',
  '{id}: {count} [part|parts], section {area} mm²': '{id}: {count} [Teil|Teile], Schnitt {area} mm²',
  '{percent} % on no laser': '{percent} % auf keinem Laser',
  '{percent} % on {laser}': '{percent} % auf {laser}',
  '{words}, imbalance {imbalance}': '{words}, Ungleichgewicht {imbalance}',
};
