/** German of dialogs and check pages. */
export const SCREENS = {};
