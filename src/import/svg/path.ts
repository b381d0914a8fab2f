/**
 * SVG path data and transform attributes to curves and plane maps, parsed by svgpath. Arcs keep their ellipse
 * (svgpath would turn them into Bézier curves that are 0.03 % of the radius off); the way from end points to centre is
 * SVG 2, appendix B.2.4.
 */
import svgpath from 'svgpath';
import { IDENTITY, type Affine } from '../affine';
import { FULL_TURN, bezier, line, type ArcCurve, type Curve } from '../curve';

/** Curves of one subpath. */
export type Subpath = Curve[];

const LONGEST_TRANSFORM = 10_000;

/** The map of a transform attribute; null where it cannot be read. */
export function readTransform(text: string | undefined): Affine | null {
  if (text === undefined || text.trim() === '') return IDENTITY;
  if (text.length > LONGEST_TRANSFORM || !/^\s*([a-z]+\s*\([-+.,\deE\s]*\)[\s,]*)*$/i.test(text)) return null;
  // svgpath wants one separator between numbers; the standard also allows "10-5".
  const spaced = text.replace(/\s+/g, ' ').replace(/([\d.])-/g, '$1 -');
  const corner: number[] = [];
  svgpath('M0 0L1 0L0 1')
    .transform(spaced)
    .iterate(([, x, y]) => void corner.push(Number(x), Number(y)));
  const [e, f, ae, bf, ce, df] = corner;
  const map: Affine = [ae - e, bf - f, ce - e, df - f, e, f];
  return map.every(Number.isFinite) ? map : null;
}

/** Subpaths of path data in its own units; null where the data is broken. */
export function readPath(data: string): Subpath[] | null {
  const path = svgpath(data) as ReturnType<typeof svgpath> & { readonly err: string };
  if (path.err !== '') return null;
  const reader = new Reader();
  path
    .abs()
    .unshort()
    .iterate((segment, _index, x, y) => reader.take(segment as readonly (string | number)[], x, y));
  return reader.sound ? reader.subpaths.filter((curves) => curves.length > 0) : null;
}

class Reader {
  readonly subpaths: Subpath[] = [];
  sound = true;
  private current: Subpath | null = null;
  private startX = 0;
  private startY = 0;

  take(segment: readonly (string | number)[], x: number, y: number): void {
    const [command, ...rest] = segment;
    const p = rest.map(Number);
    if (!p.every(Number.isFinite)) this.sound = false;
    switch (command) {
      case 'M':
        [this.startX, this.startY] = p;
        this.current = null;
        return;
      case 'Z':
      case 'z':
        if (this.current !== null && (x !== this.startX || y !== this.startY))
          this.current.push(line(x, y, this.startX, this.startY));
        this.current = null;
        return;
      default:
        this.draw(String(command), p, x, y);
    }
  }

  private draw(command: string, p: readonly number[], x: number, y: number): void {
    const curve = drawn(command, p, x, y);
    if (curve === 'unknown') {
      this.sound = false;
      return;
    }
    if (this.current === null) {
      // After a closing "Z" the next subpath begins where the last one did.
      [this.startX, this.startY] = [x, y];
      this.subpaths.push((this.current = []));
    }
    if (curve !== null) this.current.push(curve);
  }
}

/** The curve of one drawing command from (x, y); null where it has no length. */
function drawn(command: string, p: readonly number[], x: number, y: number): Curve | null | 'unknown' {
  switch (command) {
    case 'L':
      return line(x, y, p[0], p[1]);
    case 'H':
      return line(x, y, p[0], y);
    case 'V':
      return line(x, y, x, p[0]);
    case 'C':
    case 'Q':
      return bezier([x, y, ...p]);
    case 'A':
      return endpointArc(x, y, p);
    default:
      return 'unknown';
  }
}

/** rx, ry, rotation, large, sweep, x, y → the arc by its centre. */
function endpointArc(x0: number, y0: number, p: readonly number[]): Curve | null {
  const [, , rotation, large, sweep, x1, y1] = p;
  let [rx, ry] = [Math.abs(p[0]), Math.abs(p[1])];
  if (x0 === x1 && y0 === y1) return null;
  if (rx === 0 || ry === 0) return line(x0, y0, x1, y1);
  const phi = (rotation * Math.PI) / 180;
  const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
  const hx = (cos * (x0 - x1) + sin * (y0 - y1)) / 2;
  const hy = (-sin * (x0 - x1) + cos * (y0 - y1)) / 2;
  const reach = (hx / rx) ** 2 + (hy / ry) ** 2;
  if (reach > 1) [rx, ry] = [rx * Math.sqrt(reach), ry * Math.sqrt(reach)];
  const side = large === sweep ? -1 : 1;
  const off = side * Math.sqrt(Math.max(0, 1 / Math.min(reach, 1) - 1));
  const [cx, cy] = reach >= 1 ? [0, 0] : [(off * rx * hy) / ry, (-off * ry * hx) / rx];
  const from = Math.atan2((hy - cy) / ry, (hx - cx) / rx);
  let to = Math.atan2((-hy - cy) / ry, (-hx - cx) / rx);
  if (sweep === 1 && to < from) to += FULL_TURN;
  if (sweep === 0 && to > from) to -= FULL_TURN;
  const arc: ArcCurve = {
    kind: 'arc',
    cx: cos * cx - sin * cy + (x0 + x1) / 2,
    cy: sin * cx + cos * cy + (y0 + y1) / 2,
    ux: rx * cos,
    uy: rx * sin,
    vx: -ry * sin,
    vy: ry * cos,
    from,
    to,
  };
  return arc;
}
