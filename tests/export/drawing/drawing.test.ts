/**
 * Drawings of the zones, read back by our own readers of outlines and by a reader that is not ours (dxf-parser). Areas and
 * lengths of rectangles [mathematics].
 */
import DxfParser from 'dxf-parser';
import { describe, expect, it } from 'vitest';
import { analyse } from '../../../src/build/analyse';
import { layerName, zonesDxf } from '../../../src/export/drawing/zonesDxf';
import { zonesSvg } from '../../../src/export/drawing/zonesSvg';
import { planPictureOf } from '../../../src/export/plan/planSvg';
import { area } from '../../../src/geometry/region';
import { ringFromLayout } from '../../../src/geometry/ring';
import { clean } from '../../../src/geometry/clipper';
import { placeImport, readOutlines } from '../../../src/import/outlines';
import type { Layout } from '../../../src/layout/types';
import { block, blocked, strips } from '../plates';

const pictureOf = (layout: Layout, height_mm = 5) => planPictureOf(analyse(layout), height_mm);
const dxfOf = (layout: Layout, platform = true) => zonesDxf(pictureOf(layout), { blocked: false, platform });

interface Entity {
  readonly type: string;
  readonly layer: string;
  readonly shape?: boolean;
  readonly text?: string;
  readonly vertices?: readonly { readonly x: number; readonly y: number }[];
}
function parsed(text: string) {
  const document = new DxfParser().parseSync(text);
  if (!document) throw new Error('not read');
  return { header: document.header, entities: document.entities as unknown as Entity[] };
}
function areaOf(vertices: readonly { x: number; y: number }[]): number {
  return vertices.reduce((sum, a, i) => {
    const b = vertices[(i + 1) % vertices.length]!;
    return sum + (a.x * b.y - b.x * a.y) / 2;
  }, 0);
}

/** Areas of the shapes our reader finds, the least first. */
function areasRead(name: string, text: string): number[] {
  const read = readOutlines(name, text, { chainGap_mm: 0.01 });
  if (!read.ok) throw new Error(read.fault.code);
  return placeImport(read.value)
    .map(({ rings }) => area(clean(rings.map(ringFromLayout), 'evenOdd').region))
    .sort((a, b) => a - b);
}

describe('zones as DXF', () => {
  it('hold each zone, the platform and the seams in millimetres, for another reader', () => {
    const { header, entities } = parsed(dxfOf(block()));
    expect(header['$INSUNITS']).toBe(4);
    const byLayer = new Map(entities.map((entity) => [entity.layer, entity]));
    expect([...byLayer.keys()].sort()).toEqual(['PLATFORM', 'SEAMS', 'ZONE_L1', 'ZONE_L2']);
    const { width_mm, depth_mm } = block().machine.platform;
    for (const [layer, expected] of [
      ['PLATFORM', width_mm * depth_mm],
      ['ZONE_L1', (width_mm / 2 + 10) * depth_mm],
      ['ZONE_L2', (width_mm / 2 - 10) * depth_mm],
    ] as const) {
      expect(byLayer.get(layer)?.shape).toBe(true);
      expect(areaOf(byLayer.get(layer)!.vertices!)).toBeCloseTo(expected, 6);
    }
    const seam = byLayer.get('SEAMS')!.vertices!;
    expect(seam.map(({ x }) => x)).toEqual([10, 10]);
    expect(Math.abs(seam[1]!.y - seam[0]!.y)).toBeCloseTo(60, 6);
  });

  it('are read back by our own reader with the same areas', () => {
    const { width_mm, depth_mm } = block().machine.platform;
    const areas = areasRead('zones.dxf', dxfOf(block(), false));
    expect(areas).toHaveLength(2);
    expect(areas[0]).toBeCloseTo((width_mm / 2 - 10) * depth_mm, 6);
    expect(areas[1]).toBeCloseTo((width_mm / 2 + 10) * depth_mm, 6);
  });

  it('overlap by the shared band', () => {
    const layout = block({ zoning: [{ from_mm: 0, zoning: strips(10, ['L1', 'L2'], 20) }] });
    const { depth_mm, width_mm } = layout.machine.platform;
    const zones = parsed(dxfOf(layout)).entities.filter(({ layer }) => layer.startsWith('ZONE_'));
    const sum = zones.reduce((total, { vertices }) => total + areaOf(vertices!), 0);
    expect(sum).toBeCloseTo((width_mm + 20) * depth_mm, 6);
  });

  it('say so where the plate is not for use', () => {
    const text = zonesDxf(pictureOf(blocked()), { blocked: true, platform: true });
    const words = parsed(text).entities.filter(({ type }) => type === 'TEXT');
    expect(words.map(({ text: said }) => said)).toEqual(['NOT FOR USE']);
    expect(dxfOf(block())).not.toContain('NOT FOR USE');
  });

  it('keep to what the format allows in names of layers', () => {
    expect(layerName('ZONE_Läser 1;x')).toBe('ZONE_L_SER_1_X');
    expect(layerName('ZONE_'.padEnd(60, 'A'))).toHaveLength(31);
  });
});

describe('zones as SVG', () => {
  it('are read back by our own reader with the same areas, in true size', () => {
    const { width_mm, depth_mm } = block().machine.platform;
    const areas = areasRead('zones.svg', zonesSvg(pictureOf(block()), false));
    expect(areas).toHaveLength(2);
    expect(areas[0]).toBeCloseTo((width_mm / 2 - 10) * depth_mm, 3);
    expect(areas[1]).toBeCloseTo((width_mm / 2 + 10) * depth_mm, 3);
  });

  it('say so where the plate is not for use, and escape its name', () => {
    const text = zonesSvg(pictureOf({ ...blocked(), name: '<b>&' }), true);
    expect(text).toMatch(/>NOT FOR USE<\/text>/);
    expect(text).toContain('&lt;b&gt;&amp;');
    expect(zonesSvg(pictureOf(block()), false)).not.toContain('NOT FOR USE');
  });
});
