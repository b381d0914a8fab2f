/** German of the sheet, cautions and names of service events. */
export const SHEET = {};
