/** German of all that comes after the first paint, by where it is shown; no text stands in two files. */
import { CANVAS } from './canvas';
import { COMMANDS_AROUND } from './commands/around';
import { COMMANDS_ARRANGE } from './commands/arrange';
import { COMMANDS_CLIPBOARD } from './commands/clipboard';
import { COMMANDS_DIVISION } from './commands/division';
import { COMMANDS_DRAW } from './commands/draw';
import { COMMANDS_EDIT } from './commands/edit';
import { COMMANDS_FILE } from './commands/file';
import { COMMANDS_HELP } from './commands/help';
import { COMMANDS_PART } from './commands/part';
import { COMMANDS_SCHEDULE } from './commands/schedule';
import { COMMANDS_VIEW } from './commands/view';
import { COMMON1 } from './common1';
import { COMMON2 } from './common2';
import { ENGINE1 } from './engine1';
import { ENGINE2 } from './engine2';
import { FILES } from './files';
import { MESSAGES_EDIT } from './messages/edit';
import { MESSAGES_EXPORT } from './messages/export';
import { MESSAGES_FILE } from './messages/file';
import { MESSAGES_LIBRARY } from './messages/library';
import { MESSAGES_LINK } from './messages/link';
import { MESSAGES_MESH } from './messages/mesh';
import { MESSAGES_OUTLINE } from './messages/outline';
import { MESSAGES_PART } from './messages/part';
import { MESSAGES_PLATE } from './messages/plate';
import { MESSAGES_REVISION } from './messages/revision';
import { MESSAGES_SCHEDULE } from './messages/schedule';
import { MESSAGES_SOUND } from './messages/sound';
import { MESSAGES_TABLE } from './messages/table';
import { PANELS_AROUND } from './panels/around';
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
import { SCREENS_DIALOGS1 } from './screens/dialogs1';
import { SCREENS_DIALOGS2 } from './screens/dialogs2';
import { SCREENS_HAND_OVER } from './screens/handOver';
import { SCREENS_IMPORT_CHECK } from './screens/importCheck';
import { SCREENS_LIBRARY } from './screens/library';
import { SCREENS_LINK } from './screens/link';
import { SCREENS_MESH_CHECK } from './screens/meshCheck';
import { SCREENS_SHEET } from './screens/sheet';
import { SCREENS_TABLE } from './screens/table';
import { SHEET } from './sheet';

export const REST = {
  ...CANVAS,
  ...COMMANDS_AROUND,
  ...COMMANDS_ARRANGE,
  ...COMMANDS_CLIPBOARD,
  ...COMMANDS_DIVISION,
  ...COMMANDS_DRAW,
  ...COMMANDS_EDIT,
  ...COMMANDS_FILE,
  ...COMMANDS_HELP,
  ...COMMANDS_PART,
  ...COMMANDS_SCHEDULE,
  ...COMMANDS_VIEW,
  ...COMMON1,
  ...COMMON2,
  ...ENGINE1,
  ...ENGINE2,
  ...FILES,
  ...MESSAGES_EDIT,
  ...MESSAGES_EXPORT,
  ...MESSAGES_FILE,
  ...MESSAGES_LIBRARY,
  ...MESSAGES_LINK,
  ...MESSAGES_MESH,
  ...MESSAGES_OUTLINE,
  ...MESSAGES_PART,
  ...MESSAGES_PLATE,
  ...MESSAGES_REVISION,
  ...MESSAGES_SCHEDULE,
  ...MESSAGES_SOUND,
  ...MESSAGES_TABLE,
  ...PANELS_AROUND,
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
  ...SCREENS_DIALOGS1,
  ...SCREENS_DIALOGS2,
  ...SCREENS_HAND_OVER,
  ...SCREENS_IMPORT_CHECK,
  ...SCREENS_LIBRARY,
  ...SCREENS_LINK,
  ...SCREENS_MESH_CHECK,
  ...SCREENS_SHEET,
  ...SCREENS_TABLE,
  ...SHEET,
};
