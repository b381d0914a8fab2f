/**
 * Outlines and circles as whole numbers of micrometres. A ring is: 0 and a circle's x, y, r; 1 and the number of an
 * earlier ring that is the same; or its number of points p and a way w of expecting steps
 * as 2p + w, and its points, each as the step from the point before less the step that was expected (steps.ts). The first
 * step of every ring starts where the ring before began. A closing point that repeats the first stays as it is.
 */
import type { LayoutRing, Outline, Point } from '../layout/types';
import { Unreadable, type IntegerReader, type IntegerWriter } from './integers';
import { cost, NO_STEP, surprises, WAYS, type Step } from './steps';

const CIRCLE = 0;
const AGAIN = 1;
const STEPS_PER_MM = 1000;
/** A body of a few bytes may name one long ring over and over: all points together, repeated ones too, stay below this. */
const MOST_POINTS = 4_000_000;

/** Millimetres in whole micrometres. */
export const toSteps = (value_mm: number): number => Math.round(value_mm * STEPS_PER_MM) + 0;
/** The same double that reading a file gives. */
export const fromSteps = (steps: number): number => steps / STEPS_PER_MM;

const isCircle = (ring: LayoutRing): ring is Exclude<LayoutRing, Outline> => 'circle_mm' in ring;

/** Writes rings, each different one once. */
export class RingWriter {
  private readonly known = new Map<string, number>();
  private x = 0;
  private y = 0;
  constructor(private readonly out: IntegerWriter) {}

  ring(ring: LayoutRing): void {
    const key = JSON.stringify(ring);
    const earlier = this.known.get(key);
    if (earlier !== undefined) {
      this.out.whole(AGAIN);
      this.out.whole(earlier);
      return;
    }
    this.known.set(key, this.known.size);
    if (isCircle(ring)) this.circle(ring.circle_mm);
    else this.outline(ring);
  }

  private start(x: number, y: number): void {
    this.out.signed(x - this.x);
    this.out.signed(y - this.y);
    [this.x, this.y] = [x, y];
  }
  private circle([x, y, radius]: readonly [number, number, number]): void {
    this.out.whole(CIRCLE);
    this.start(toSteps(x), toSteps(y));
    this.out.whole(toSteps(radius));
  }
  private outline(points: Outline): void {
    const places = points.map(([x, y]): Step => [toSteps(x), toSteps(y)]);
    const steps = places.slice(1).map(([x, y], i): Step => [x - places[i]![0], y - places[i]![1]]);
    const ways = WAYS.map((expected) => surprises(steps, expected));
    const costs = ways.map(cost);
    const best = costs.indexOf(Math.min(...costs));
    this.out.whole(points.length * WAYS.length + best);
    this.start(...(places[0] ?? [0, 0]));
    for (const value of ways[best]!.flat()) this.out.signed(value);
  }
}

/** Reads what RingWriter wrote. */
export class RingReader {
  private readonly known: LayoutRing[] = [];
  private points = 0;
  private x = 0;
  private y = 0;
  constructor(private readonly from: IntegerReader) {}

  ring(): LayoutRing {
    const kind = this.from.whole();
    if (kind === AGAIN) return this.again(this.from.whole());
    const ring = kind === CIRCLE ? this.circle() : this.outline(kind);
    this.known.push(ring);
    return ring;
  }

  private start(): Point {
    this.x += this.from.signed();
    this.y += this.from.signed();
    return [fromSteps(this.x), fromSteps(this.y)];
  }
  private count(points: number): void {
    this.points += points;
    if (this.points > MOST_POINTS) throw new Unreadable('it holds too many points');
  }
  private again(index: number): LayoutRing {
    const ring = this.known[index];
    if (ring === undefined) throw new Unreadable('it names a ring that it does not hold');
    this.count(isCircle(ring) ? 1 : ring.length);
    return ring;
  }
  private circle(): LayoutRing {
    const [x, y] = this.start();
    return { circle_mm: [x, y, fromSteps(this.from.whole())] };
  }
  private outline(kind: number): LayoutRing {
    const count = Math.floor(kind / WAYS.length);
    const expected = WAYS[kind % WAYS.length]!;
    this.count(count);
    const points: Point[] = [this.start()];
    let [x, y] = [this.x, this.y];
    let [before, last]: [Step, Step] = [NO_STEP, NO_STEP];
    for (let i = 1; i < count; i++) {
      const [stepX, stepY] = expected(before, last);
      [before, last] = [last, [stepX + this.from.signed(), stepY + this.from.signed()]];
      [x, y] = [x + last[0], y + last[1]];
      points.push([fromSteps(x), fromSteps(y)]);
    }
    return points;
  }
}
