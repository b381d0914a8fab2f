/**
 * The one list of commands. Keyboard, buttons, help and tests read it; no key appears twice.
 */
import { measureParts } from './draw/measureParts';
import { alignCommands } from './arrange/align';
import { distributeCommands } from './arrange/distribute';
import { mirrorCommands } from './arrange/mirror';
import { spread } from './arrange/spread';
import { clipboardCommands } from './clipboard/commands';
import { addStrip } from './division/addStrip';
import { allDivisions } from './division/allDivisions';
import { allocateBalanced } from './division/allocateBalanced';
import { allocateWholeParts } from './division/allocateWholeParts';
import { changeFromHere } from './division/changeFromHere';
import { goToStepCommands } from './division/goToStep';
import { laserCommands } from './division/lasers';
import { nextZoneLine } from './division/nextZoneLine';
import { removeChange } from './division/removeChange';
import { removeStrip } from './division/removeStrip';
import { strategyCommands } from './division/strategies';
import { zoneLineCommands } from './division/zoneLine';
import { toolCommands } from './draw/tools';
import { copyInRows } from './edit/copyInRows';
import { deleteParts } from './edit/deleteParts';
import { duplicate } from './edit/duplicate';
import { redo } from './edit/redo';
import { selectAll } from './edit/selectAll';
import { selectLaserCommands, selectSameLaser, selectSameShape } from './edit/selectLike';
import { stepBack } from './edit/stepBack';
import { undo } from './edit/undo';
import { copyLink } from './file/copyLink';
import { handOver } from './file/handOver';
import { library } from './file/library';
import { newPlate } from './file/newPlate';
import { openDemo } from './file/openDemo';
import { openLayoutFile } from './file/openLayoutFile';
import { openOutlines } from './file/openOutlines';
import { saveLayout } from './file/saveLayout';
import { sheet } from './file/sheet';
import { sideBySide } from './file/sideBySide';
import { dialogCommands } from './help/dialogs';
import { hideCommands } from './part/hide';
import { keepOrder } from './part/keepOrder';
import { listPlaceCommands } from './part/listPlace';
import { lock } from './part/lock';
import { moveCommands } from './part/move';
import { pinCommands } from './part/pin';
import { seamsFree } from './part/seamsFree';
import { seamsNone } from './part/seamsNone';
import { turnCommands } from './part/turn';
import { unpin } from './part/unpin';
import { dropSchedule } from './schedule/dropSchedule';
import { planStart } from './schedule/planStart';
import type { Command, Context } from './types';
import { heightDown, heightUp } from './view/height';
import { languageCommands } from './view/language';
import { wheel } from './view/wheel';
import { snapping } from './view/snapping';
import { theme } from './view/theme';
import { zoomIn, zoomOut } from './view/zoom';
import { zoomFit } from './view/zoomFit';

const fileCommands = [
  newPlate,
  openDemo,
  openLayoutFile,
  openOutlines,
  saveLayout,
  copyLink,
  library,
  sideBySide,
  sheet,
  handOver,
];
const editCommands = [
  undo,
  redo,
  ...clipboardCommands,
  deleteParts,
  duplicate,
  copyInRows,
  selectAll,
  stepBack,
];
const selectCommands = [selectSameShape, selectSameLaser, ...selectLaserCommands];
const arrangeCommands = [...alignCommands, ...distributeCommands, ...mirrorCommands, spread];
const seamCommands = [seamsFree, seamsNone];
const allocationCommands = [allocateBalanced, allocateWholeParts];
const scheduleCommands = [planStart, dropSchedule];
const stepCommands = [changeFromHere, removeChange, ...goToStepCommands];
const stripCommands = [addStrip, removeStrip];
const viewCommands = [
  zoomIn,
  zoomOut,
  zoomFit,
  heightUp,
  heightDown,
  snapping,
  theme,
  ...languageCommands,
  wheel,
];

export const COMMANDS: readonly Command[] = [
  ...fileCommands,
  ...editCommands,
  ...selectCommands,
  ...moveCommands,
  ...turnCommands,
  ...arrangeCommands,
  ...seamCommands,
  ...pinCommands,
  unpin,
  lock,
  ...hideCommands,
  ...listPlaceCommands,
  keepOrder,
  ...toolCommands,
  measureParts,
  ...strategyCommands,
  allDivisions,
  ...allocationCommands,
  ...stripCommands,
  nextZoneLine,
  ...zoneLineCommands,
  ...stepCommands,
  ...laserCommands,
  ...scheduleCommands,
  ...viewCommands,
  ...dialogCommands,
];

/** The command of that id; throws for an id that is not in the list (a programmer's error). */
export function command(id: string): Command {
  const found = COMMANDS.find((candidate) => candidate.id === id);
  if (!found) throw new Error(`command: expected an id of the list, got "${id}"`);
  return found;
}

/** Runs a command where it applies; true where it did. */
export function runCommand(id: string, context: Context): boolean {
  const chosen = command(id);
  if (!chosen.when(context)) return false;
  void chosen.run(context);
  return true;
}
