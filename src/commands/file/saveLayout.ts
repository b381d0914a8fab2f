/** Hands the layout over as a file named after it. */
import { fileWords } from '../../export/forUse';
import type { Layout } from '../../layout/types';
import { writeLayout } from '../../layout/write';
import { isLarge } from '../../store/apartForm';
import { always, layoutOf } from '../make';
import type { Command, Context } from '../types';

/** "Ferry spares, plate 1" → "ferry-spares-plate-1.json". */
export const fileName = (layoutName: string): string => `${fileWords(layoutName)}.json`;

const BYTES_PER_MB = 1_000_000;

/** Sections of meshes: written beside the page, and said where the file cannot be opened again. */
async function saveLarge({ bench, ports }: Context, layout: Layout): Promise<void> {
  const [{ writeLayoutBeside }, { LAYOUT_LIMIT_MB }] = await Promise.all([
    import('../../worker/layoutFiles'),
    import('../../layout/read'),
  ]);
  const content = (await writeLayoutBeside(layout)) ?? new TextEncoder().encode(writeLayout(layout));
  const found = Math.ceil(content.length / BYTES_PER_MB);
  if (found > LAYOUT_LIMIT_MB)
    bench.notify({ code: 'file-too-large-to-open', params: { found, limit: LAYOUT_LIMIT_MB } });
  ports.download(fileName(layout.name), content, 'application/json');
}

/** Hands any layout over as a file. */
export function saveFile(context: Context, layout: Layout): void | Promise<void> {
  if (isLarge(layout)) return saveLarge(context, layout);
  context.ports.download(fileName(layout.name), writeLayout(layout), 'application/json');
}

export const saveLayout: Command = {
  id: 'save-layout',
  label: 'Save layout file',
  group: 'file',
  keys: ['Ctrl+S'],
  when: always,
  run: (context) => saveFile(context, layoutOf(context)),
};
