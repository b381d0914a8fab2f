/** German of all that comes after the first paint, by where it is shown; no text stands in two files. */
import { CANVAS } from './canvas';
import { COMMON } from './common';
import { ENGINE } from './engine';
import { FILES } from './files';
import { PANELS_BLADE } from './panels/blade';
import { PANELS_CONTROLS } from './panels/controls';
import { PANELS_DIVISION } from './panels/division';
import { PANELS_HEADER } from './panels/header';
import { PANELS_MACHINE } from './panels/machine';
import { PANELS_PARTS } from './panels/parts';
import { PANELS_PLAN_MENU } from './panels/planMenu';
import { PANELS_PROCESS } from './panels/process';
import { PANELS_READOUT1 } from './panels/readout1';
import { PANELS_READOUT2 } from './panels/readout2';
import { PANELS_SCHEDULE } from './panels/schedule';
import { PANELS_SPOKEN } from './panels/spoken';
import { PANELS_TITLE } from './panels/title';
import { PANELS_VIEWS } from './panels/views';
import { SCREENS_COMPARE } from './screens/compare';
import { SCREENS_DIALOGS } from './screens/dialogs';
import { SCREENS_IMPORT_CHECK } from './screens/importCheck';
import { SCREENS_LIBRARY } from './screens/library';
import { SCREENS_LINK } from './screens/link';
import { SCREENS_MESH_CHECK } from './screens/meshCheck';
import { SCREENS_TABLE } from './screens/table';

export const REST = {
  ...CANVAS,
  ...COMMON,
  ...ENGINE,
  ...FILES,
  ...PANELS_BLADE,
  ...PANELS_CONTROLS,
  ...PANELS_DIVISION,
  ...PANELS_HEADER,
  ...PANELS_MACHINE,
  ...PANELS_PARTS,
  ...PANELS_PLAN_MENU,
  ...PANELS_PROCESS,
  ...PANELS_READOUT1,
  ...PANELS_READOUT2,
  ...PANELS_SCHEDULE,
  ...PANELS_SPOKEN,
  ...PANELS_TITLE,
  ...PANELS_VIEWS,
  ...SCREENS_COMPARE,
  ...SCREENS_DIALOGS,
  ...SCREENS_IMPORT_CHECK,
  ...SCREENS_LIBRARY,
  ...SCREENS_LINK,
  ...SCREENS_MESH_CHECK,
  ...SCREENS_TABLE,
};
