/** German of the panels: views. */
export const PANELS_VIEWS = {
  '0: no grid. It holds the origin of the part where nothing else does.':
    '0: kein Raster. Es hält den Ursprung des Teils, wo sonst nichts hält.',
  Fit: 'Einpassen',
  grid: 'Raster',
  'Snap to edges, middles, zone lines and gaps (Shift+G); Alt or Ctrl suspends':
    'Fang an Kanten, Mitten, Zonenlinien und Abständen (Umschalt+G); Alt oder Strg setzt aus',
  'Stretch of equal sections': 'Bereich gleicher Schnitte',
  Tool: 'Werkzeug',
};
