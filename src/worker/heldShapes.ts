/**
 * What a thread that computes heights keeps from question to question: the shapes it was sent, and the last layout, from
 * which what did not change is taken over by identity, so that nothing known of it is computed again.
 */
import { takenOver } from '../layout/same';
import type { Layout, Shape } from '../layout/types';
import type { HeightQuestion } from './heightMessages';
import { unpackShape } from './packShape';

const withoutShapes = ({ shapes: _shapes, ...rest }: Layout): Omit<Layout, 'shapes'> => rest;

export class HeldShapes {
  private readonly shapes = new Map<number, Shape>();
  private last: Layout | null = null;

  /** Takes in the shapes that came with a question. */
  take({ sent }: HeightQuestion): void {
    for (const [key, packed] of sent) this.shapes.set(key, unpackShape(packed));
  }

  /** The layout that is asked for; shapes it does not use are forgotten. Throws where a shape was never sent. */
  layoutOf({ layout, shapes }: HeightQuestion): Layout {
    const known = Object.fromEntries(
      Object.entries(shapes).map(([id, key]) => {
        const shape = this.shapes.get(key);
        if (!shape) throw new Error(`HeldShapes: expected shape ${key} to have been sent`);
        return [id, shape];
      }),
    );
    const used = new Set(Object.values(shapes));
    for (const key of this.shapes.keys()) if (!used.has(key)) this.shapes.delete(key);
    const before = this.last;
    const rest = before ? takenOver<Omit<Layout, 'shapes'>>(withoutShapes(before), layout) : layout;
    return (this.last = { ...rest, shapes: known });
  }
}
