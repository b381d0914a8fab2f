/**
 * Words of the check page for meshes: what is being done, what a body is like, what came out of cutting it, whether it
 * fits the machine. Millimetres, mm³.
 */
import { messageAdvice, messageText } from '../../layout/messages';
import { meshLayers } from '../../import/mesh/layers';
import type { LayerRun } from '../../import/mesh/types';
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

/** "up to 0.0040 mm"; below the grid of a layout no figure says anything. */
export const crackText = (width_mm: Mm): string =>
  width_mm < 0.001 ? 'under 0.001 mm' : `up to ${width_mm.toPrecision(2)} mm`;

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

/** Layers of a body so high; one at least. */
export const layersOf = (height: Mm, layer_mm: Mm): number => Math.max(1, meshLayers(height, layer_mm));

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
    ...equalText(cut),
    ...(cut.topCovered ? [`layer ${layers} is empty at its middle: the slab below reaches the top`] : []),
    ...emptyText(cut),
    ...layersWith(cut.openLayers, `with open outlines, left out there${gapText(cut)}`),
    ...layersWith(cut.unitedLayers, 'with overlapping outlines, united'),
  ];
}

const runLength = ([from, to]: LayerRun): number => to - from + 1;
const runName = ([from, to]: LayerRun): string => (from === to ? `layer ${from}` : `layers ${from} to ${to}`);

/** Which layers share a slab with the one below. */
function equalText({ equalLayers, firstEqual }: MeshBodyCut): string[] {
  if (firstEqual === null) return [];
  if (equalLayers === runLength(firstEqual) - 1) return [`${runName(firstEqual)} are equal`];
  return [`${counted(equalLayers, 'layer')} equal to the one below, first in ${runName(firstEqual)}`];
}

function emptyText({ emptyLayers, firstEmpty }: MeshBodyCut): string[] {
  if (firstEmpty === null) return [];
  const which = emptyLayers === runLength(firstEmpty) ? ': ' : ', first ';
  return [`${counted(emptyLayers, 'layer')} with nothing solid${which}${runName(firstEmpty)}`];
}

const gapText = ({ widestGap_mm }: MeshBodyCut): string =>
  widestGap_mm === null || !Number.isFinite(widestGap_mm)
    ? ''
    : `; the widest gap is ${formatField(Math.ceil(widestGap_mm * 1000) / 1000)} mm`;
