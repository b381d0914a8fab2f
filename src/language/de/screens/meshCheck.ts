/** German of the screens: mesh check. */
export const SCREENS_MESH_CHECK = {
  'as in the file': 'wie in der Datei',
  'Cancel cutting': 'Schneiden abbrechen',
  'from above': 'von oben',
  'from the front': 'von vorn',
  'from the front right': 'von vorn rechts',
  obliquely: 'schräg',
  'The buttons turn what is seen; it then stands on its lowest point.':
    'Die Knöpfe drehen, was zu sehen ist; es steht dann auf seinem tiefsten Punkt.',
};
