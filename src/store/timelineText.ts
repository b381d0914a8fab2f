/**
 * Undo and redo over a reload: the timeline as one text. States of a plate share most of what they are made of, so every
 * part, list and setting is written once and named by its number; shapes of the open plate are not written at all, for
 * they are saved with it. What does not belong to the open plate is no timeline. No units.
 */
import { sameValue } from '../layout/same';
import type { Layout, Shape } from '../layout/types';
import { charactersOf } from './apartForm';
import type { Moment, Timeline } from './types';

/** Longest text; the oldest states give way. */
const MOST_CHARACTERS = 500_000;

type Refs = readonly number[];
/** A layout by numbers: its plain keys in the order of `keys`, its list of parts, its record of shapes. */
type MomentText = readonly [lastChange: string | null, plain: Refs, parts: number, shapes: number];
interface TimelineText {
  readonly keys: readonly string[];
  /** Settings, zonings and parts. */
  readonly values: readonly unknown[];
  /** Lists of parts, by their numbers among the values. */
  readonly lists: readonly Refs[];
  /** Numbers from the count of the open plate's shapes on. */
  readonly shapes: readonly Shape[];
  readonly records: readonly Readonly<Record<string, number>>[];
  readonly past: readonly MomentText[];
  readonly present: MomentText;
  readonly future: readonly MomentText[];
}

/** Numbers things in the order of their first coming. */
class Numbers<T> {
  readonly items: T[];
  private readonly known: Map<T, number>;
  constructor(items: readonly T[] = []) {
    this.items = [...items];
    this.known = new Map(items.map((item, i) => [item, i]));
  }
  of(item: T): number {
    const known = this.known.get(item);
    if (known !== undefined) return known;
    this.known.set(item, this.items.length);
    return this.items.push(item) - 1;
  }
}

const keysOf = (layout: Layout): string[] =>
  Object.keys(layout).filter((key) => key !== 'parts' && key !== 'shapes');

class Writer {
  private readonly values = new Numbers<unknown>();
  private readonly lists = new Numbers<Layout['parts']>();
  private readonly records = new Numbers<Layout['shapes']>();
  private readonly keys: readonly string[];
  private readonly shapes: Numbers<Shape>;
  private readonly own: number;

  constructor(present: Layout) {
    this.keys = keysOf(present);
    this.shapes = new Numbers(Object.values(present.shapes));
    this.own = this.shapes.items.length;
  }

  moment({ layout, lastChange }: Moment): MomentText {
    const plain = this.keys.map((key) => this.values.of(layout[key as keyof Layout]));
    return [lastChange, plain, this.lists.of(layout.parts), this.records.of(layout.shapes)];
  }

  text(moments: Pick<TimelineText, 'past' | 'present' | 'future'>): string {
    const lists = this.lists.items.map((parts) => parts.map((part) => this.values.of(part)));
    const records = this.records.items.map((shapes) =>
      Object.fromEntries(Object.entries(shapes).map(([name, shape]) => [name, this.shapes.of(shape)])),
    );
    const shapes = this.shapes.items.slice(this.own);
    const text: TimelineText = {
      keys: this.keys,
      values: this.values.items,
      lists,
      shapes,
      records,
      ...moments,
    };
    return JSON.stringify(text);
  }
}

/** The states nearest to the present (which stands after the last) whose own shapes take no more than so much text. */
function affordable(moments: readonly Moment[], present: Layout): readonly Moment[] {
  const seen = new Set(Object.values(present.shapes));
  let characters = 0;
  const tooMuch = ({ layout }: Moment): boolean => {
    for (const shape of Object.values(layout.shapes)) {
      if (!seen.has(shape)) characters += charactersOf(shape);
      seen.add(shape);
    }
    return characters > MOST_CHARACTERS / 2;
  };
  return moments.slice(moments.findLastIndex(tooMuch) + 1);
}

function written({ past, present, future }: Timeline): string {
  const writer = new Writer(present.layout);
  const all = (moments: readonly Moment[]) => moments.map((moment) => writer.moment(moment));
  return writer.text({ past: all(past), present: writer.moment(present), future: all(future) });
}

/** The timeline as text, its farthest states left out where it would be too long; null where there is none. */
export function timelineText({ past, present, future }: Timeline): string | null {
  let [before, after] = [affordable(past, present.layout), affordable(future, present.layout)];
  while (before.length + after.length > 0) {
    const text = written({ past: before, present, future: after });
    if (text.length <= MOST_CHARACTERS) return text;
    before = before.slice(Math.ceil(before.length / 2));
    after = after.slice(Math.ceil(after.length / 2));
  }
  return null;
}

/** What the numbers of a text stand for; shapes of the open plate are its own. */
function reader(text: TimelineText, open: Layout): (moment: MomentText) => Moment {
  const shapes = [...Object.values(open.shapes), ...text.shapes];
  const at = <T>(items: readonly T[], i: number): T => {
    if (!(i in items)) throw new Error(`timeline: expected a number below ${items.length}, got ${i}`);
    return items[i] as T;
  };
  const lists = text.lists.map((refs) => refs.map((ref) => at(text.values, ref)));
  const records = text.records.map((refs) =>
    Object.fromEntries(Object.entries(refs).map(([name, ref]) => [name, at(shapes, ref)])),
  );
  return ([lastChange, plain, parts, record]) => {
    const values = text.keys.map((key, i) => [key, at(text.values, plain[i] ?? -1)]);
    const layout = { ...Object.fromEntries(values), parts: at(lists, parts), shapes: at(records, record) };
    return { layout: layout as unknown as Layout, lastChange };
  };
}

/**
 * The timeline that a text holds, where its present is the open plate; else null. Its states share what they have in
 * common, and the shapes of the open plate.
 */
export function readTimeline(text: string, open: Layout): Timeline | null {
  try {
    const found = JSON.parse(text) as TimelineText;
    const moment = reader(found, open);
    const present = moment(found.present);
    if (!sameValue(present.layout, open)) return null;
    return { past: found.past.map(moment), present, future: found.future.map(moment) };
  } catch {
    return null;
  }
}
