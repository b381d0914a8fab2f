/**
 * Writes a layout to where it fits: one text in the page's own storage, or the shapes to the large storage and the rest
 * beside their stamp. At every moment what is saved is a whole layout, the newest that is certain. What another window has
 * saved meanwhile is kept aside first, and its shapes are left alone.
 */
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import { drop, held, LARGE_KEY, LAYOUT_KEY, OTHER_KEY, put, type LoadLarge } from './savedForm';
import { apartText, isLarge, newStamp } from './apartForm';
import type { SharedStorage } from './sharedStorage';

/** Shapes that the large storage has. */
interface Base {
  readonly shapes: Layout['shapes'];
  readonly stamp: string;
}
/** Shapes on their way to it. */
interface Sent extends Base {
  /** What LARGE_KEY held before; null where the layout was one text or there was none. */
  readonly before: string | null;
}

/** What the storages hold when the page opens. */
export interface Known {
  readonly layout: Layout;
  /** Of its shapes in the large storage; null where the layout is one text. */
  readonly stamp: string | null;
}
export interface KeeperOptions {
  readonly storage: SharedStorage;
  readonly loadLarge: LoadLarge;
  readonly known: Known | null;
  /** How a writing went: the fault, or null where all is saved. */
  readonly told: (fault: Fault | null) => void;
  /** Another window's plate was found in the place of this one's. */
  readonly overtaken: () => void;
}

const FULL: Fault = { code: 'work-not-saved-full', params: {} };

/** Keeps layouts; a writing that fails is told and leaves what was saved before. */
export class LayoutKeeper {
  private readonly options: KeeperOptions;
  private written: Layout | null;
  private base: Base | null;
  private sent: Sent | null = null;

  constructor(options: KeeperOptions) {
    this.options = options;
    const { known } = options;
    this.written = known?.layout ?? null;
    this.base = known?.stamp ? { shapes: known.layout.shapes, stamp: known.stamp } : null;
  }

  /** Writes a layout; what is written already is not written again. */
  keep(layout: Layout): void {
    if (layout === this.written || !this.admitted()) return;
    this.written = layout;
    if (!isLarge(layout) && this.keepWhole(layout)) this.options.told(null);
    else if (this.sent?.shapes === layout.shapes) this.keepRest(layout, this.sent, this.sent.before);
    else if (this.base?.shapes === layout.shapes && !this.sent) this.tell(this.keepRest(layout, this.base));
    else this.send(layout);
  }

  /** True where this window may write: another one's plate has been kept aside, or there is none. */
  private admitted(): boolean {
    const kept = this.options.storage.keepOthers();
    if (kept === 'none') return true;
    this.options.overtaken();
    // The other window may have given up the shapes that this one had written, or be about to name them.
    this.base = null;
    if (kept === 'no room') this.tell(false);
    return kept === 'kept';
  }

  /** True where this layout is written, and another window has written another one over it. */
  overtaken(layout: Layout): boolean {
    return layout === this.written && this.options.storage.overtaken();
  }

  private tell(kept: boolean): void {
    this.options.told(kept ? null : FULL);
  }

  /** One text; shapes in the large storage are then no longer needed. */
  private keepWhole(layout: Layout): boolean {
    const { storage } = this.options;
    if (!put(storage, LAYOUT_KEY, JSON.stringify(layout))) return false;
    drop(storage, LARGE_KEY);
    if (this.base) this.forget(this.base);
    this.base = this.sent = null;
    return true;
  }

  private keepRest(layout: Layout, { stamp }: Base, before: string | null = null): boolean {
    return put(this.options.storage, LARGE_KEY, apartText(stamp, layout, before));
  }

  private send(layout: Layout): void {
    const { storage, loadLarge } = this.options;
    const before = this.sent ? this.sent.before : held(storage, LARGE_KEY);
    const sent: Sent = { shapes: layout.shapes, stamp: newStamp(), before };
    this.sent = sent;
    this.keepRest(layout, sent, before);
    void loadLarge()
      .then((large) => large.write(sent.stamp, JSON.stringify(sent.shapes)))
      .then(
        () => this.arrive(sent),
        () => this.fail(sent),
      );
  }

  /** From here on the shapes are certain: what was kept against their loss is given up. */
  private arrive(sent: Sent): void {
    if (this.sent !== sent || !this.written) return this.forget(sent);
    if (!this.admitted()) return this.fail(sent);
    const older = this.base;
    this.base = sent;
    this.sent = null;
    const kept = this.keepRest(this.written, sent) || this.makeRoom(this.written, sent);
    if (kept) drop(this.options.storage, LAYOUT_KEY);
    if (kept && older) this.forget(older);
    this.tell(kept);
  }

  /** The one text of an older state may stand in the way of the newer rest. */
  private makeRoom(layout: Layout, base: Base): boolean {
    const { storage } = this.options;
    const older = held(storage, LAYOUT_KEY);
    if (older === null) return false;
    drop(storage, LAYOUT_KEY);
    if (this.keepRest(layout, base)) return true;
    put(storage, LAYOUT_KEY, older);
    return false;
  }

  private fail(sent: Sent): void {
    if (this.sent !== sent) return;
    const { storage } = this.options;
    this.sent = null;
    this.written = null;
    if (storage.overtaken()) return this.tell(false);
    if (sent.before === null) drop(storage, LARGE_KEY);
    else put(storage, LARGE_KEY, sent.before);
    this.tell(false);
  }

  private forget({ stamp }: Base): void {
    if (held(this.options.storage, OTHER_KEY)?.includes(stamp)) return;
    void this.options
      .loadLarge()
      .then((large) => large.remove(stamp))
      .catch(() => undefined);
  }
}
