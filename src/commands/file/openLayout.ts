/** Puts another layout on the workbench as one history entry, so that undo brings the former one back. */
import type { Layout } from '../../layout/types';
import type { Workbench } from '../../store/types';

/** Puts `layout` on the workbench under `label`; ends an open gesture and shows the platform from its lowest layer. */
export function openLayout(bench: Workbench, label: string, layout: Layout): void {
  bench.replace(label, layout);
  bench.setView({ selection: [], hover: null, camera: null, tool: 'select', height_mm: 0 });
}
