/**
 * Words of the check page for meshes: what is being done, what a body is like, what came out of cutting it, whether it
 * fits the machine. Millimetres, mm³.
 */
import { t, withDecimalSign, type Text } from '../../language/index';
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

/** Seconds of a job are not known beforehand: the share stands for them. */
export function doingText(at: MeshDoing): string {
  const percent = `${Math.floor(100 * at.share)} %`;
  switch (at.doing) {
    case 'reading':
      return t('Reading, {percent}', { percent });
    case 'checking':
      return t('Checking {body}', { body: at.body });
    case 'cutting':
      return t('Cutting {body}: layer {layer} of {layers}', {
        body: at.body,
        layer: at.layer,
        layers: at.layers,
      });
  }
}

export const sentence = ({ code, params }: Fault): string =>
  `${messageText(code, params)} ${messageAdvice(code, params)}`;

/** "up to 0.0040 mm"; below the grid of a layout no figure says anything. */
export const crackText = (width_mm: Mm): string =>
  width_mm < 0.001
    ? t('under 0.001 mm')
    : t('up to {width} mm', { width: withDecimalSign(width_mm.toPrecision(2)) });

export const sizeText = (size: Size): string => size.map((value) => formatNumber(value)).join(' × ') + ' mm';

/** "12 triangles in 1 shell, watertight, 8.00 cm³". */
export function factsText({ check }: MeshBodyLook): string {
  const { triangles, shells } = check;
  const made = t('{triangles} [triangles: triangle|triangles] in {shells} [shells: shell|shells]', {
    triangles,
    shells,
  });
  if (check.volume_mm3 === null) return t('{made}, not watertight', { made });
  return t('{made}, watertight, {value}', { made, value: formatCm3(check.volume_mm3 / MM3_PER_CM3) });
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
  const height = t('height {z} of {buildHeight}', {
    z: formatNumber(z),
    buildHeight: formatMm(buildHeight_mm),
  });
  const foot = t('footprint {x} × {y} of {width} × {depth}', {
    x: formatNumber(x),
    y: formatNumber(y),
    width: formatNumber(width),
    depth: formatMm(depth),
  });
  if (z <= buildHeight_mm && inside)
    return { fits: true, text: t('Fits the machine: {height}, {foot}.', { height, foot }) };
  const found: Text =
    z <= buildHeight_mm
      ? 'It is too large: {height}, {foot}.'
      : inside
        ? 'It is too high: {height}, {foot}.'
        : 'It is too high and too large: {height}, {foot}.';
  return { fits: false, text: t(found, { height, foot }) };
}

/** Layers of a body so high; one at least. */
export const layersOf = (height: Mm, layer_mm: Mm): number => Math.max(1, meshLayers(height, layer_mm));

/** What came out, one line each. */
export function outcomeLines(cut: MeshBodyCut): string[] {
  const { slabCount, layers, volume_mm3, meshVolume_mm3 } = cut;
  const lines = [
    t('{slabs} [slabs: slab|slabs] of {layers} [layers: layer|layers]', { slabs: slabCount, layers }),
  ];
  const volume = formatCm3(volume_mm3 / MM3_PER_CM3);
  lines.push(
    meshVolume_mm3 === null
      ? t('slabs hold {volume}; the mesh is not watertight and has no volume to compare with', { volume })
      : t('slabs hold {volume}, {value} % of the mesh', {
          volume,
          value: formatNumber((100 * volume_mm3) / meshVolume_mm3, 5, 2),
        }),
  );
  const layersWith = (count: number, what: Text): string[] =>
    count === 0 ? [] : [t(what, { count, gap: gapText(cut) })];
  return [
    ...lines,
    ...equalText(cut),
    ...(cut.topCovered
      ? [t('layer {layers} is empty at its middle: the slab below reaches the top', { layers })]
      : []),
    ...emptyText(cut),
    ...layersWith(cut.openLayers, '{count} [layer|layers] with open outlines, left out there{gap}'),
    ...layersWith(cut.unitedLayers, '{count} [layer|layers] with overlapping outlines, united'),
  ];
}

const runLength = ([from, to]: LayerRun): number => to - from + 1;
const runName = ([from, to]: LayerRun): string =>
  from === to ? t('layer {layer}', { layer: from }) : t('layers {from} to {to}', { from, to });

/** Which layers share a slab with the one below. */
function equalText({ equalLayers, firstEqual }: MeshBodyCut): string[] {
  if (firstEqual === null) return [];
  if (equalLayers === runLength(firstEqual) - 1)
    return [t('{layers} are equal', { layers: runName(firstEqual) })];
  return [
    t('{count} [layer|layers] equal to the one below, first in {layers}', {
      count: equalLayers,
      layers: runName(firstEqual),
    }),
  ];
}

function emptyText({ emptyLayers, firstEmpty }: MeshBodyCut): string[] {
  if (firstEmpty === null) return [];
  return [
    t(
      emptyLayers === runLength(firstEmpty)
        ? '{count} [layer|layers] with nothing solid: {layers}'
        : '{count} [layer|layers] with nothing solid, first {layers}',
      { count: emptyLayers, layers: runName(firstEmpty) },
    ),
  ];
}

const gapText = ({ widestGap_mm }: MeshBodyCut): string =>
  widestGap_mm === null || !Number.isFinite(widestGap_mm)
    ? ''
    : t('; the widest gap is {value} mm', { value: formatField(Math.ceil(widestGap_mm * 1000) / 1000) });
