/** German of files that people read. */
export const FILES = {
  'NOT FOR USE': 'NICHT VERWENDEN',
};
