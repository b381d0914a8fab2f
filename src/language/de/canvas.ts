/** German of what stands over plan, elevation and chart. */
export const CANVAS = {
  'Parts from the front': 'Teile von vorn',
  'platform, seen from the front': 'Bauplattform, von vorn gesehen',
  'Time per layer over the height': 'Zeit je Schicht über der Höhe',
};
