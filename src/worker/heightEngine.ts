/**
 * Computes the whole height of plates, the newest one asked for: first a look at every so-many-th range of layers, which is
 * carried through so that a long drag sees the height follow, then all of them, shared out with the threads beside this
 * one, then its problems, each dropped when a newer question comes. Works in slices of a few milliseconds and pauses
 * between them, so it may run in a worker or, where there is none, beside the page's own work.
 */
import { problemSteps } from '../build/findProblems';
import { freeRules, portionSteps } from '../build/portions';
import { plateOf, type Plate } from '../build/plate';
import { sameAnswer } from '../build/sameAnswer';
import { anyKeepsLaser, type Rules } from '../build/rules';
import {
  byPart,
  divide,
  DIVIDING,
  groupsIn,
  rulesOver,
  scaled,
  Stacks,
  wholeOf,
  type Portion,
  type Whole,
} from '../build/stack';
import { totalsOf } from '../build/totals';
import type { LayerTotals, Stretch } from '../build/types';
import { checksumSteps } from '../layout/checksum';
import type { Layout } from '../layout/types';
import type { HeightAnswer, HeightQuestion } from './heightMessages';
import { HeldShapes } from './heldShapes';
import type { Mates } from './mates';
import { packStretches, unpackStretches } from './packStretches';
import { inSlices, type Clock } from './slices';

/** Ranges that a first look computes; a plate with fewer than twice as many needs none. */
const FIRST_LOOK = 120;
/** The farthest that is told before the whole height itself: nothing is done while something is left. */
const NEARLY = 0.99;
/** How far it is, is told this often at most: every telling is work for the page, which the threads then wait for. */
const TOLD_MS = 100;

type Mode = 'carry through' | 'newest only';

export interface EnginePorts extends Clock {
  tell(answer: HeightAnswer, handOver: ArrayBuffer[]): void;
}

export class HeightEngine {
  private readonly held = new HeldShapes();
  private readonly stacks = new Stacks(totalsOf, sameAnswer);
  private newest: HeightQuestion | null = null;
  private busy = false;
  private newerCame: () => void = () => undefined;
  /** @param mates threads that share high builds out with this one; null: this one computes all */
  constructor(
    private readonly ports: EnginePorts,
    private readonly mates: Mates | null = null,
  ) {}

  /** Takes a question; one that waits for its turn is forgotten. Resolved when nothing is left to do. */
  async ask(question: HeightQuestion): Promise<void> {
    this.mates?.ask(question);
    this.held.take(question);
    this.newest = question;
    this.newerCame();
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

  private async compute(question: HeightQuestion): Promise<void> {
    const layout = this.held.layoutOf(question);
    const plate = plateOf(layout);
    const every = Math.floor(plate.ranges.length / FIRST_LOOK);
    if (every > 1) {
      const first = await this.run(this.stacks.run(plate, every), 'carry through', this.telling(question, 0));
      this.report(question, layout, first!, every);
    }
    const whole =
      this.mates && every > 1
        ? await this.shareOut(question, plate, this.mates)
        : await this.run(this.stacks.run(plate), 'newest only', this.telling(question, NEARLY));
    if (!whole) return;
    this.report(question, layout, whole, 1);
    await this.follow(question, plate, whole);
  }

  /** What nobody waits for in the middle of a drag. What this thread has divided already, it remembers. */
  private async follow(
    { id }: HeightQuestion,
    plate: Plate,
    { rules, stretches }: Whole<LayerTotals>,
  ): Promise<void> {
    const { layout } = plate;
    const divided = await this.run(divide(plate, 1), 'newest only');
    if (!divided) return;
    const examined = { plate, sections: byPart(divided), rules, stretches };
    const found = await this.run(problemSteps(examined), 'newest only');
    if (!found) return;
    this.ports.tell({ kind: 'problems', id, found }, []);
    const checksum = await this.run(checksumSteps(layout), 'newest only');
    if (checksum) this.ports.tell({ kind: 'checksum', id, checksum }, []);
  }

  /** All layers, its own portion computed here and the others by the mates. */
  private async shareOut(
    question: HeightQuestion,
    plate: Plate,
    mates: Mates,
  ): Promise<Whole<LayerTotals> | null> {
    const tell = this.telling(question, NEARLY);
    const rules = await this.rulesFor(question, plate, mates, tell);
    if (!rules) return null;
    const portion = (index: number) => this.portion(plate, rules, { index, of: mates.portions }, tell);
    const own = await portion(0);
    const others = own && (await this.unlessNewer(mates.found()));
    if (!others) return null;
    const stretches = [...own];
    for (const [i, packed] of others.entries()) {
      const more = packed ? unpackStretches(packed, plate.layout.machine.lasers) : await portion(i + 1);
      if (!more) return null;
      stretches.push(...more);
    }
    this.stacks.forget(groupsIn(plate, 1));
    stretches.sort((a, b) => a.firstLayer - b.firstLayer);
    return wholeOf(plate, rules, stretches);
  }

  /** The rules over the whole height; the mates are told what they cannot know from their own portions. */
  private async rulesFor(
    { id }: HeightQuestion,
    plate: Plate,
    mates: Mates,
    tell: (share: number) => void,
  ): Promise<Rules | null> {
    if (!anyKeepsLaser(plate.layout)) return freeRules(plate);
    const divided = await this.run(scaled(divide(plate, 1), 0, DIVIDING), 'newest only', tell);
    if (!divided) return null;
    const rules = rulesOver(divided);
    mates.tellRules(id, rules);
    return rules;
  }

  private portion(
    plate: Plate,
    rules: Rules,
    portion: Portion,
    tell: (share: number) => void,
  ): Promise<Stretch[] | null> {
    return this.run(portionSteps(this.stacks, plate, rules, portion), 'newest only', tell);
  }

  /** What is waited for; null as soon as a newer question comes. */
  private unlessNewer<T>(waited: Promise<T>): Promise<T | null> {
    if (this.newest) return Promise.resolve(null);
    const newer = new Promise<null>((resolve) => (this.newerCame = () => resolve(null)));
    return Promise.race([waited, newer]);
  }

  /** Tells how far the whole height is, up to `most`. */
  private telling({ id }: HeightQuestion, most: number): (share: number) => void {
    let told = this.ports.now();
    return (share) => {
      if (this.ports.now() - told < TOLD_MS) return;
      told = this.ports.now();
      this.ports.tell({ kind: 'progress', id, share: Math.min(share, most) }, []);
    };
  }

  /** null where a newer question made this one idle. */
  private run<Step, T>(
    steps: Generator<Step, T, undefined>,
    mode: Mode,
    tell?: (step: Step) => void,
  ): Promise<T | null> {
    return inSlices(this.ports, steps, () => this.newest !== null && mode === 'newest only', tell);
  }

  private report({ id }: HeightQuestion, layout: Layout, whole: Whole<LayerTotals>, every: number): void {
    const stretches = packStretches(whole.stretches, layout.machine.lasers);
    const { build, rules } = whole;
    this.ports.tell({ kind: 'height', id, every, stretches, build, rules }, [stretches.buffer]);
  }
}
