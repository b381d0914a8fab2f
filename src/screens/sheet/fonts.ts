/**
 * The font of the sheet, which has the letters of most of Europe, Greek and Cyrillic among them, and the symbols that
 * figures need: the same on screen, on paper and in the PDF, so that lines break alike. It comes with the page, as base64
 * in a script of its own: nothing is fetched for it. DejaVu Sans Condensed, free to embed.
 */
import type { Measure } from '../../export/sheet/drawing/pen';

export const FONT = 'Evenplate Sheet';
/** Widths of words are measured at this size and scaled: rounding to whole px then vanishes. */
const MEASURED_AT_PX = 200;

export interface SheetFonts {
  /** As base64. */
  readonly regular: string;
  readonly bold: string;
  readonly measure: Measure;
}

const contentOf = (address: string): string => address.slice(address.indexOf(',') + 1);

async function show(base64: string, weight: 'normal' | 'bold'): Promise<void> {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  document.fonts.add(await new FontFace(FONT, bytes, { weight }).load());
}

function measureOf(): Measure {
  const context = document.createElement('canvas').getContext('2d');
  if (context === null) throw new Error('this browser draws no letters on a canvas');
  return (words, size_mm, bold) => {
    context.font = `${bold ? 'bold ' : ''}${MEASURED_AT_PX}px "${FONT}"`;
    return (context.measureText(words).width * size_mm) / MEASURED_AT_PX;
  };
}

async function load(): Promise<SheetFonts> {
  const [regular, bold] = await Promise.all([
    import('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?inline'),
    import('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?inline'),
  ]).then((fonts) => fonts.map(({ default: address }) => contentOf(address)));
  if (regular === undefined || bold === undefined) throw new Error('the font of the sheet is missing');
  await Promise.all([show(regular, 'normal'), show(bold, 'bold')]);
  return { regular, bold, measure: measureOf() };
}

let loading: Promise<SheetFonts> | null = null;

/** The fonts, loaded once; a failure is tried anew the next time. */
export function sheetFonts(): Promise<SheetFonts> {
  loading ??= load().catch((error: unknown) => {
    loading = null;
    throw error;
  });
  return loading;
}
