/**
 * What stands around the plate and its figures, in one piece that is loaded once they have been painted: one file packs
 * better than ten.
 */
import './forcedColours.css';

export { listenToKeys } from '../commands/keyboard';
export { listenToDrops } from '../commands/listenToDrops';
export { listenToLinks } from '../commands/listenToLinks';
export { rememberMarks } from '../store/marks';
export { Header } from '../panels/header/Header';
export { TitleBlock } from '../panels/title/TitleBlock';
export { Spoken } from '../panels/spoken/Spoken';
export { PlanHead } from '../panels/views/ToolBar';
export { EmptyPlate } from './EmptyPlate';
export { ListColumn } from './ListColumn';
export { LowerViews } from './LowerViews';
export { Notices } from './Notices';
export { OpenDialog } from './OpenDialog';
