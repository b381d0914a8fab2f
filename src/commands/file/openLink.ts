/**
 * Opens what an address names after "#": a plate takes the place of the open one, as one history entry, and is looked at as
 * its sender did; a comparison goes to its screen. What is no link, or a broken one, is reported in one sentence and the
 * open plate stays as it is.
 */
import { t } from '../../language/index';
import type { Result } from '../../layout/result';
import type { AnyLinked } from '../../link/index';
import type { Workbench } from '../../store/types';
import type { Context } from '../types';
import { openLayout } from './openLayout';

type Opener = Pick<Context['ports'], 'showComparison'>;

function openPlate(bench: Workbench, { layouts, view }: AnyLinked): void {
  const [layout] = layouts;
  if (layout === undefined) return;
  openLayout(bench, t('Open {name} by its link', { name: layout.name }), layout);
  bench.setView({ height_mm: view.height_mm ?? 0, camera: view.camera ?? null });
}

async function read(text: string): Promise<Result<AnyLinked>> {
  try {
    const { readLink } = await import('../../worker/links');
    return await readLink(text);
  } catch {
    return { ok: false, fault: { code: 'link-not-read', params: {} } };
  }
}

/** Opens a link: a whole address or the part after "#". Never throws. */
export async function openLink(bench: Workbench, ports: Opener, text: string): Promise<void> {
  const linked = await read(text);
  if (!linked.ok) bench.notify(linked.fault);
  else if (linked.value.kind === 'comparison') ports.showComparison(linked.value);
  else openPlate(bench, linked.value);
}
