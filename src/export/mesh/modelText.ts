/**
 * The model part of a 3MF: one object for each shape on the plate, one build item for each part. Source: 3MF Core
 * Specification 1.3, ISO/IEC 25422 [memory]: unit millimeter, points as rows in front of the matrix, origin at the build
 * space's front left corner, so that every part stands at its place plus half the platform.
 */
import { cosSin } from '../../geometry/region';
import type { Layout, Part } from '../../layout/types';
import { escapeXml } from '../plan/marks';
import type { Prism } from './prisms';

const DECIMALS = 1e6;
const rounded = (value: number): number => Math.round(value * DECIMALS) / DECIMALS + 0;

export interface ModelWords {
  readonly title: string;
  readonly description: string;
}

export const modelHead = ({ title, description }: ModelWords): string =>
  `<?xml version="1.0" encoding="UTF-8"?>
<model unit="millimeter" xml:lang="en" xmlns="http://schemas.microsoft.com/3dmanufacturing/core/2015/02">
<metadata name="Title">${escapeXml(title)}</metadata>
<metadata name="Description">${escapeXml(description)}</metadata>
<metadata name="Application">Evenplate</metadata>
<resources>
`;

/** An object's vertices and triangles in the order they were met; indices run on from prism to prism. */
export class ObjectText {
  private readonly vertices: string[] = [];
  private readonly triangles: string[] = [];
  private points = 0;
  /** Triangles so far. */
  count = 0;

  add({ points, triangles }: Prism): void {
    const first = this.points;
    let text = '';
    for (let i = 0; i < points.length; i += 3)
      text += `<vertex x="${rounded(points[i]!)}" y="${rounded(points[i + 1]!)}" z="${rounded(points[i + 2]!)}"/>\n`;
    this.vertices.push(text);
    text = '';
    for (let t = 0; t < triangles.length; t += 3)
      text += `<triangle v1="${first + triangles[t]!}" v2="${first + triangles[t + 1]!}" v3="${first + triangles[t + 2]!}"/>\n`;
    this.triangles.push(text);
    this.points += points.length / 3;
    this.count += triangles.length / 3;
  }

  /** The whole object, piece by piece. */
  *pieces(id: number, name: string): Generator<string> {
    yield `<object id="${id}" type="model" name="${escapeXml(name)}"><mesh><vertices>\n`;
    yield* this.vertices;
    yield '</vertices><triangles>\n';
    yield* this.triangles;
    yield '</triangles></mesh></object>\n';
  }
}

/** Where a part stands, as twelve numbers. */
function transformOf(
  { at_mm, turn_deg }: Part,
  { width_mm, depth_mm }: Layout['machine']['platform'],
): string {
  const [c, s] = cosSin(turn_deg);
  const [x, y] = [rounded(at_mm[0] + width_mm / 2), rounded(at_mm[1] + depth_mm / 2)];
  return [c, s, 0, -s + 0, c, 0, 0, 0, 1, x, y, 0].join(' ');
}

/** @param ids object ids of the shapes that have a body */
export function modelFoot({ parts, machine }: Layout, ids: ReadonlyMap<string, number>): string {
  const items = parts
    .filter(({ shape }) => ids.has(shape))
    .map(
      (part) =>
        `<item objectid="${ids.get(part.shape)}" transform="${transformOf(part, machine.platform)}" partnumber="${escapeXml(part.id)}"/>\n`,
    );
  return `</resources>\n<build>\n${items.join('')}</build>\n</model>\n`;
}
