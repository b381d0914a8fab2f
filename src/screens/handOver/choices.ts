/** How files are to be written, as the dialog's fields say it; kept from opening to opening. mm above the platform. */
import { language, type Text } from '../../language/index';
import type { PlanGround } from '../../export/plan/ink';
import type { CsvForm } from '../../export/table/csv';
import type { FileAsked, FileKind } from '../../export/files/types';
import type { Layout } from '../../layout/types';
import type { Mm } from '../../units/types';

export const CELLS = {
  point: { words: '1.5 and commas between', csv: { separator: ',', decimal: '.' } },
  semicolonPoint: { words: '1.5 and semicolons between', csv: { separator: ';', decimal: '.' } },
  semicolonComma: { words: '1,5 and semicolons between', csv: { separator: ';', decimal: ',' } },
} as const satisfies Record<string, { words: Text; csv: CsvForm }>;

/** Pixels of a PNG for each px of the picture. */
export const SCALES = { svg: null, png1: 1, png2: 2, png3: 3 } as const;
export type PictureForm = keyof typeof SCALES;

export interface Choices {
  readonly cells: keyof typeof CELLS;
  /** What is cut: at the height shown, or where a step of the zoning begins. */
  readonly at: 'shown' | number;
  readonly picture: PictureForm;
  readonly ground: PlanGround;
  readonly labels: boolean;
  readonly zones: 'dxf' | 'svg';
}

/** Before anything is chosen: numbers as spreadsheets of the page's language read them. */
export const firstChoices = (): Choices => ({
  cells: language() === 'de' ? 'semicolonComma' : 'point',
  at: 'shown',
  picture: 'svg',
  ground: 'light',
  labels: true,
  zones: 'dxf',
});

/** Where the plate is cut: the first layer whose middle lies in the chosen step, or the height shown. */
export function heightOf({ at }: Choices, { zoning, process }: Layout, shown_mm: Mm): Mm {
  const step = at === 'shown' ? undefined : zoning[at];
  return step === undefined ? shown_mm : step.from_mm + process.layer_mm / 2;
}

/** What is asked of the engine for a file of a kind. */
export function askedOf(kind: FileKind, choices: Choices, height_mm: Mm): FileAsked {
  const { csv } = CELLS[choices.cells];
  switch (kind) {
    case 'parts':
    case 'layers':
      return { kind, csv };
    case 'picture':
      return { kind, height_mm, ground: choices.ground, labels: choices.labels };
    case 'zones':
      return { kind, height_mm, form: choices.zones };
    case 'report':
      return { kind, height_mm };
    case 'mesh':
      return { kind };
  }
}
