/**
 * Words of the check page for meshes: what is being done, what a body is like, what came out of cutting it, whether it
 * fits the machine. Millimetres, mm³.
 */
import { messageAdvice, messageText } from '../../layout/messages';
import type { Fault } from '../../layout/result';
import type { Machine } from '../../layout/types';
import { formatCm3, formatField, formatMm, formatNumber } from '../../units/format';
import type { Mm } from '../../units/types';
import type { MeshBodyCut, MeshBodyLook, MeshDoing } from '../../worker/meshMessages';

const MM3_PER_CM3 = 1000;

export type Size = readonly [Mm, Mm, Mm];

const counted = (count: number, one: string, many = `${one}s`): string =>
  `${count} ${count === 1 ? one : many}`;

/** Seconds of a job are not known beforehand: the share stands for them. */
export function doingText(at: MeshDoing): string {
  const percent = `${Math.floor(100 * at.share)} %`;
  switch (at.doing) {
    case 'reading':
      return `Reading, ${percent}`;
    case 'checking':
      return `Checking ${at.body}`;
    case 'cutting':
      return `Cutting ${at.body}: layer ${at.layer} of ${at.layers}`;
  }
}

export const sentence = ({ code, params }: Fault): string =>
  `${messageText(code, params)} ${messageAdvice(code, params)}`;

export const sizeText = (size: Size): string => size.map((value) => formatNumber(value)).join(' × ') + ' mm';

/** "12 triangles in 1 shell, watertight, 8.00 cm³". */
export function factsText({ check }: MeshBodyLook): string {
  const made = `${counted(check.triangles, 'triangle')} in ${counted(check.shells, 'shell')}`;
  if (check.volume_mm3 === null) return `${made}, not watertight`;
  return `${made}, watertight, ${formatCm3(check.volume_mm3 / MM3_PER_CM3)}`;
}

export interface Fit {
  readonly fits: boolean;
  readonly text: string;
}

/** A body as it is turned, against the height of the build and the platform inside its margin. */
export function fitOf([x, y, z]: Size, { platform, buildHeight_mm }: Machine): Fit {
  const width = platform.width_mm - 2 * platform.margin_mm;
  const depth = platform.depth_mm - 2 * platform.margin_mm;
  const inside = (x <= width && y <= depth) || (y <= width && x <= depth);
  const height = `height ${formatNumber(z)} of ${formatMm(buildHeight_mm)}`;
  const foot = `footprint ${formatNumber(x)} × ${formatNumber(y)} of ${formatNumber(width)} × ${formatMm(depth)}`;
  if (z <= buildHeight_mm && inside) return { fits: true, text: `Fits the machine: ${height}, ${foot}.` };
  const found = [...(z > buildHeight_mm ? ['too high'] : []), ...(inside ? [] : ['too large'])];
  return { fits: false, text: `It is ${found.join(' and ')}: ${height}, ${foot}.` };
}

/** Layers of a body so high; a rounding error makes no extra one. */
export const layersOf = (height: Mm, layer_mm: Mm): number =>
  Math.max(1, Math.ceil(Number((height / layer_mm).toFixed(9))));

/** What came out, one line each. */
export function outcomeLines(cut: MeshBodyCut): string[] {
  const { slabCount, layers, volume_mm3, meshVolume_mm3 } = cut;
  const lines = [`${counted(slabCount, 'slab')} of ${counted(layers, 'layer')}`];
  const volume = formatCm3(volume_mm3 / MM3_PER_CM3);
  lines.push(
    meshVolume_mm3 === null
      ? `slabs hold ${volume}; the mesh is not watertight and has no volume to compare with`
      : `slabs hold ${volume}, ${formatNumber((100 * volume_mm3) / meshVolume_mm3, 5, 2)} % of the mesh`,
  );
  const layersWith = (count: number, what: string): string[] =>
    count === 0 ? [] : [`${counted(count, 'layer')} ${what}`];
  return [
    ...lines,
    ...layersWith(cut.emptyLayers, 'with nothing solid'),
    ...layersWith(cut.openLayers, `with open outlines, left out there${gapText(cut)}`),
    ...layersWith(cut.unitedLayers, 'with overlapping outlines, united'),
  ];
}

const gapText = ({ widestGap_mm }: MeshBodyCut): string =>
  widestGap_mm === null || !Number.isFinite(widestGap_mm)
    ? ''
    : `; the widest gap is ${formatField(Math.ceil(widestGap_mm * 1000) / 1000)} mm`;
