/** German of all that comes after the first paint, by subject; no text stands in two files. */
import { COMMANDS } from './commands';
import { MESSAGES } from './messages';
import { PANELS } from './panels';
import { READOUT } from './readout';
import { SCREENS } from './screens';
import { SHEET } from './sheet';

export const REST = { ...COMMANDS, ...MESSAGES, ...PANELS, ...READOUT, ...SCREENS, ...SHEET };
