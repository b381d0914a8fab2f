/** German of the readout's later parts and the explanations of its figures. */
export const READOUT = {};
