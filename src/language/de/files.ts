/** German of files that people read. */
export const FILES = {
  'NOT FOR USE': 'NICHT VERWENDEN',
  'Plan of {name} at {height} mm': 'Draufsicht von {name} bei {height} mm',
};
