/** German of the screens: sheet. */
export const SCREENS_SHEET = {
  'Gathering who exposes what over the whole height': 'Sammelt, wer was über die ganze Höhe belichtet',
  'Loading the font': 'Lädt die Schrift',
  'The plate is still being checked': 'Die Platte wird noch geprüft',
};
