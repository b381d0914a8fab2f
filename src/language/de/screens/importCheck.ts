/** German of the screens: import check. */
export const SCREENS_IMPORT_CHECK = {
  'copies of each': 'Kopien von jedem',
  'height of all': 'Höhe aller',
  'Left out': 'Weggelassen',
  'Lines without a fill are no area: to have one taken, fill it in the drawing program.':
    'Linien ohne Füllung sind keine Fläche: soll eine gelten, im Zeichenprogramm füllen.',
  'Nothing was left out.': 'Nichts wurde weggelassen.',
};
