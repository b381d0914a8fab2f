/** German of header, lists, inspectors and lower views. */
export const PANELS = {};
