/** What the readout shows below the layer's figures, in one piece that is loaded once they have been painted. */
import './afterFigures.css';

export { BuildList } from './BuildList';
export { LackHints } from './LackHints';
export { PlumeList } from './PlumeList';
export { WholeChoices } from './WholeChoices';
