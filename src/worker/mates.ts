/**
 * The threads beside the one that answers the page: hands every question out in portions and puts the answers together.
 * Where a thread fails or cannot be made, its portion is left to the asker.
 */
import type { Rules } from '../build/rules';
import type { HeightQuestion, PortionAnswer, PortionWord } from './heightMessages';

/** One thread, as it is spoken to. */
export interface MateLine {
  say(word: PortionWord): void;
}
export type MakeMate = (hear: (answer: PortionAnswer) => void) => MateLine;

export class Mates {
  private readonly lines: readonly MateLine[];
  private id = 0;
  private answers: (PortionAnswer | undefined)[] = [];
  private allCame: () => void = () => undefined;

  /** @param count of threads to make */
  constructor(count: number, make: MakeMate) {
    this.lines = Array.from({ length: count }, (_, i) => make((answer) => this.hear(i, answer)));
  }

  /** Portions that a build is shared out in, the asker's own (the first) included. */
  get portions(): number {
    return this.lines.length + 1;
  }

  private hear(mate: number, answer: PortionAnswer): void {
    if (answer.id !== this.id) return;
    this.answers[mate] = answer;
    if (this.complete()) this.allCame();
  }

  private complete(): boolean {
    return this.lines.every((_, i) => this.answers[i] !== undefined);
  }

  /** Hands a question out. It is heard by every thread, for the shapes that come with it. */
  ask(question: HeightQuestion): void {
    this.id = question.id;
    this.answers = [];
    this.lines.forEach((line, i) => {
      line.say({ kind: 'question', question: { ...question, index: i + 1, of: this.portions } });
    });
  }

  /** Tells the rules over the whole height. */
  tellRules(id: number, rules: Rules): void {
    for (const line of this.lines) line.say({ kind: 'rules', id, rules });
  }

  /** What the other portions came to, in their order, null for one that failed; resolved when the last has come. */
  async found(): Promise<readonly (Float64Array | null)[]> {
    if (!this.complete()) await new Promise<void>((resolve) => (this.allCame = resolve));
    return this.lines.map((_, i) => this.answers[i]!.stretches);
  }
}
