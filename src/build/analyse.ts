/**
 * Layout → its whole analysis at once, problems included: for the command line, the exports and the tests. The page, which
 * shows the plate before it looks for problems, takes analysis.ts itself. Millimetres, seconds.
 */
import type { Layout } from '../layout/types';
import { analyseWith } from './analysis';
import { findProblems } from './findProblems';
import type { Analysis, LayerFigures } from './types';

export { analyseLive, figuresAt, fitsAFrame, layerAtHeight, type KnownHeight } from './analysis';

/** The analysis of a layout that was read. Never throws for such a layout. */
export const analyse = (layout: Layout): Analysis<LayerFigures> => analyseWith(layout, findProblems);
