/**
 * Computes the whole height of plates, the newest one asked for: first a look at every so-many-th range of layers, which is
 * carried through so that a long drag sees the height follow, then all of them, then its problems, each dropped when a
 * newer question comes. Works in slices of a few milliseconds and pauses between them, so it may run in a worker or, where there is none, beside
 * the page's own work.
 */
import { problemSteps } from '../build/findProblems';
import { plateOf } from '../build/plate';
import { layerRanges } from '../build/layers';
import { sameAnswer } from '../build/recall';
import { Stacks, totalsOf, type Stack } from '../build/stack';
import type { LayerTotals } from '../build/types';
import { checksum } from '../layout/checksum';
import { takenOver } from '../layout/same';
import type { Layout, Shape } from '../layout/types';
import type { HeightAnswer, HeightQuestion } from './heightMessages';
import { packStretches } from './packStretches';
import { unpackShape } from './packShape';

/** Milliseconds of work between two pauses. */
const SLICE_MS = 12;
/** Ranges that a first look computes; a plate with fewer than twice as many needs none. */
const FIRST_LOOK = 120;
/** The farthest that is told before the whole height itself: nothing is done while something is left. */
const NEARLY = 0.99;

type Mode = 'carry through' | 'newest only';

export interface EnginePorts {
  tell(answer: HeightAnswer, handOver: ArrayBuffer[]): void;
  /** Lets waiting messages in. */
  pause(): Promise<void>;
  now(): number;
}

export class HeightEngine {
  private readonly shapes = new Map<number, Shape>();
  private readonly stacks = new Stacks(totalsOf, sameAnswer);
  private newest: HeightQuestion | null = null;
  private busy = false;
  private last: Layout | null = null;
  constructor(private readonly ports: EnginePorts) {}

  /** Takes a question; one that waits for its turn is forgotten. Resolved when nothing is left to do. */
  async ask(question: HeightQuestion): Promise<void> {
    for (const [key, packed] of question.sent) this.shapes.set(key, unpackShape(packed));
    this.newest = question;
    if (this.busy) return;
    this.busy = true;
    while (this.newest) await this.answer(this.newest);
    this.busy = false;
  }

  private async answer(question: HeightQuestion): Promise<void> {
    this.newest = null;
    try {
      await this.compute(question);
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      this.ports.tell({ kind: 'failed', id: question.id, detail }, []);
    }
  }

  /** The layout with shapes, and with what did not change taken over from the one before. */
  private layoutOf({ layout, shapes }: HeightQuestion): Layout {
    const known = Object.fromEntries(
      Object.entries(shapes).map(([id, key]) => {
        const shape = this.shapes.get(key);
        if (!shape) throw new Error(`HeightEngine: expected shape ${key} to have been sent`);
        return [id, shape];
      }),
    );
    const before = this.last;
    const rest = before ? takenOver<Omit<Layout, 'shapes'>>(withoutShapes(before), layout) : layout;
    return (this.last = { ...rest, shapes: known });
  }

  private async compute(question: HeightQuestion): Promise<void> {
    const layout = this.layoutOf(question);
    this.forgetShapes(question);
    const plate = plateOf(layout);
    const ranges = layerRanges(plate.placed, layout.zoning, layout.process.layer_mm).length;
    const every = Math.floor(ranges / FIRST_LOOK);
    if (every > 1) {
      const first = await this.run(this.stacks.run(plate, every), 'carry through', this.telling(question, 0));
      this.report(question, layout, first!, every);
    }
    const stack = await this.run(this.stacks.run(plate), 'newest only', this.telling(question, NEARLY));
    if (!stack) return;
    this.report(question, layout, stack, 1);
    const found = await this.run(problemSteps(stack), 'newest only');
    if (!found) return;
    this.ports.tell({ kind: 'problems', id: question.id, found }, []);
    await this.ports.pause();
    if (!this.newest) this.ports.tell({ kind: 'checksum', id: question.id, checksum: checksum(layout) }, []);
  }

  /** Tells how far the whole height is, up to `most`. */
  private telling({ id }: HeightQuestion, most: number): (share: number) => void {
    return (share) => this.ports.tell({ kind: 'progress', id, share: Math.min(share, most) }, []);
  }

  /** null where a newer question made this one idle. */
  private async run<Step, T>(
    steps: Generator<Step, T, undefined>,
    mode: Mode,
    tell?: (step: Step) => void,
  ): Promise<T | null> {
    for (let began = this.ports.now(); ;) {
      const step = steps.next();
      if (step.done) return step.value;
      if (this.ports.now() - began < SLICE_MS) continue;
      tell?.(step.value);
      await this.ports.pause();
      if (this.newest && mode === 'newest only') return null;
      began = this.ports.now();
    }
  }

  private report({ id }: HeightQuestion, layout: Layout, stack: Stack<LayerTotals>, every: number): void {
    const stretches = packStretches(stack.stretches, layout.machine.lasers);
    const { build, rules } = stack;
    this.ports.tell({ kind: 'height', id, every, stretches, build, rules }, [stretches.buffer]);
  }

  private forgetShapes({ shapes }: HeightQuestion): void {
    const used = new Set(Object.values(shapes));
    for (const key of this.shapes.keys()) if (!used.has(key)) this.shapes.delete(key);
  }
}

const withoutShapes = ({ shapes: _shapes, ...rest }: Layout): Omit<Layout, 'shapes'> => rest;
