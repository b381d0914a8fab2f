/** German of the panels: views. */
export const PANELS_VIEWS = {
  '0: no grid. It holds the origin of the part where nothing else does.':
    '0: kein Raster. Es hält den Ursprung des Teils, wo sonst nichts hält.',
  'all {count} lasers work unevenly': 'alle {count} Laser arbeiten ungleich',
  'Shared evenly, the same loads and their waiting for the minimum layer time would take {even} instead of {now} there (estimate). Working: {working}. Press to see the middle of this range.':
    'Gleich verteilt brauchten dieselben Lasten samt Warten auf die Mindest-Schichtzeit dort {even} statt {now} (Schätzung). Es arbeiten: {working}. Drücken zeigt die Mitte dieses Bereichs.',
  'Shared evenly, the same loads and their waiting for the minimum layer time would take {even} instead of {now} there (estimate). Working: {working}; waiting: {waiting}. Press to see the middle of this range.':
    'Gleich verteilt brauchten dieselben Lasten samt Warten auf die Mindest-Schichtzeit dort {even} statt {now} (Schätzung). Es arbeiten: {working}; es warten: {waiting}. Drücken zeigt die Mitte dieses Bereichs.',
  Fit: 'Einpassen',
  'from one of {every} layers; {percent} %': 'aus einer von {every} Schichten; {percent} %',
  'from {from} mm to the top': 'von {from} mm bis oben',
  'from {from} to {to} mm': 'von {from} bis {to} mm',
  'Loads are even: no height loses more than {lost}':
    'Lasten sind ausgeglichen: keine Höhe verliert mehr als {lost}',
  'no stretch': 'kein Bereich',
  'of the plate before; computing {percent} %': 'der vorigen Platte; rechnet {percent} %',
  'over the whole height': 'über die ganze Höhe',
  snap: 'Fang',
  'Snap to edges, middles, zone lines and gaps (Shift+G); Alt or Ctrl suspends':
    'Fang an Kanten, Mitten, Zonenlinien und Abständen (Umschalt+G); Alt oder Strg setzt aus',
  'Stretch of equal sections': 'Bereich gleicher Schnitte',
  'stretches being computed': 'Bereiche werden berechnet',
  Tool: 'Werkzeug',
  'z {from}–{to} mm, layers {firstLayer}–{lastLayer}': 'z {from}–{to} mm, Schichten {firstLayer}–{lastLayer}',
  '{count} different sections': '{count} verschiedene Schnitte',
  '{height}, layer {layer} of {layers}': '{height}, Schicht {layer} von {layers}',
  '{laser} is alone': '{laser} ist allein',
  '{lost} lost {where}: {who}': '{lost} verloren {where}: {who}',
  '{who} [waits|wait]': '{who} [wartet|warten]',
  '{who} [works|work]': '{who} [arbeitet|arbeiten]',
};
