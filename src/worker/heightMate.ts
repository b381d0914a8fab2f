/**
 * Computes one portion of a plate's ranges beside the thread that answers the page. Begins when the questions have
 * stopped coming, so that a drag keeps the processor to itself; the newest question counts.
 */
import { plateOf } from '../build/plate';
import { sameAnswer } from '../build/sameAnswer';
import { anyKeepsLaser, type Rules } from '../build/rules';
import { freeRules } from '../build/portions';
import { divide, groupsIn, Stacks } from '../build/stack';
import { totalsOf } from '../build/totals';
import type { PortionAnswer, PortionQuestion, PortionWord } from './heightMessages';
import { HeldShapes } from './heldShapes';
import { packStretches } from './packStretches';
import { inSlices, type Clock } from './slices';

export interface MatePorts extends Clock {
  tell(answer: PortionAnswer, handOver: ArrayBuffer[]): void;
  wait(ms: number): Promise<void>;
}

/** A question that no other follows within this time is worth beginning; a drag asks one every 16 ms. */
const QUIET_MS = 60;

export class HeightMate {
  private readonly held = new HeldShapes();
  private readonly stacks = new Stacks(totalsOf, sameAnswer);
  private newest: PortionQuestion | null = null;
  private rules: { readonly id: number; readonly rules: Rules } | null = null;
  private rulesCame: () => void = () => undefined;
  private busy = false;
  constructor(private readonly ports: MatePorts) {}

  /** Takes what the first thread says. Resolved when nothing is left to do. */
  async hear(word: PortionWord): Promise<void> {
    if (word.kind === 'rules') this.rules = word;
    else {
      this.held.take(word.question);
      this.newest = word.question;
    }
    this.rulesCame();
    if (this.busy) return;
    this.busy = true;
    while (this.newest) {
      const question = this.newest;
      await this.ports.wait(QUIET_MS);
      if (this.newest === question) await this.answer(question);
    }
    this.busy = false;
  }

  private async answer(question: PortionQuestion): Promise<void> {
    this.newest = null;
    try {
      await this.compute(question);
    } catch {
      // The first thread computes this portion itself, and says what is wrong with it.
      this.ports.tell({ id: question.id, stretches: null }, []);
    }
  }

  private readonly dropped = (): boolean => this.newest !== null;

  private async compute(question: PortionQuestion): Promise<void> {
    const layout = this.held.layoutOf(question);
    const plate = plateOf(layout);
    const divided = await inSlices(this.ports, divide(plate, 1, question), this.dropped);
    if (!divided) return;
    const rules = anyKeepsLaser(layout) ? await this.rulesFor(question.id) : freeRules(plate);
    if (!rules) return;
    const found = await inSlices(this.ports, this.stacks.stretches(divided, rules), this.dropped);
    if (!found) return;
    this.stacks.forget(groupsIn(plate, 1));
    const stretches = packStretches(found, layout.machine.lasers);
    this.ports.tell({ id: question.id, stretches }, [stretches.buffer]);
  }

  /** The rules over the whole height, when the first thread has told them; null where a newer question came first. */
  private async rulesFor(id: number): Promise<Rules | null> {
    while (!this.dropped()) {
      if (this.rules?.id === id) return this.rules.rules;
      await new Promise<void>((resolve) => (this.rulesCame = resolve));
    }
    return null;
  }
}
