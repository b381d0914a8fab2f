/**
 * Names of the figures on the screen; they are also the data-testid of the value. Kept apart from the explanations,
 * which load when the first one is opened.
 */
export type LaserFigureKind = 'laser' | 'load' | 'area' | 'idle' | 'pieces' | 'plumes';
export type LayerFigureName =
  | 'imbalance-time'
  | 'imbalance-area'
  | 'exposure'
  | 'layer-time'
  | 'best-possible'
  | 'cost-of-cutting'
  | 'seam-count'
  | 'seam-length'
  | 'cut-parts'
  | 'witness-lines'
  | 'unassigned'
  | 'double-exposed'
  | 'section-area'
  | 'whole-choices'
  | 'book-keeping';
export type BuildFigureName =
  | 'build-hours'
  | 'build-corrected'
  | 'hours-other-way'
  | 'build-exposure'
  | 'held-hours'
  | 'build-imbalance'
  | 'laser-hours'
  | 'idle-hours'
  | 'scan-volume';
export type FigureName = `${LaserFigureKind}-${string}` | LayerFigureName | BuildFigureName;
