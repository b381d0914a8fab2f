/**
 * The pointer over time per layer: hovering shows the plate at the height under the pointer, and leaving takes it back to
 * the height that was set; a press sets it there, a drag carries it on. A finger hovers nowhere: it presses. Millimetres.
 */
import { useEffect, useMemo, useState, type PointerEvent } from 'react';
import type { Workbench } from '../store/types';
import { roundMm } from '../units/round';
import type { Mm } from '../units/types';
import { useBench, useWorkbench } from './bench';
import type { ZAxis } from './zAxis';

/** What a pointer does with the height: which one is set, and which one it only looks at. */
export class HeightLook {
  /** The height that was set, while another one is looked at. */
  private set_mm: Mm | null = null;
  private shown_mm: Mm | null = null;
  private held = false;
  /** Under the pointer. */
  private at_mm: Mm | null = null;
  constructor(private readonly bench: Workbench) {}

  private get height_mm(): Mm {
    return this.bench.store.getState().view.height_mm;
  }
  private show(z_mm: Mm): void {
    this.shown_mm = z_mm;
    this.bench.setView({ height_mm: z_mm });
  }
  /** True where the height is still the one last looked at: nobody else, a key say, has set another. */
  private get looking(): boolean {
    return this.set_mm !== null && this.height_mm === this.shown_mm;
  }

  get pressed(): boolean {
    return this.held;
  }
  /** The height that leaving takes back; null where none is looked at. */
  get kept_mm(): Mm | null {
    return this.looking && !this.held ? this.set_mm : null;
  }
  /** A pointer that stands still, on a page that moves, asks for nothing. */
  move(z_mm: Mm): void {
    if (z_mm === this.at_mm) return;
    this.at_mm = z_mm;
    if (!this.looking) this.set_mm = this.height_mm;
    this.show(z_mm);
  }
  press(z_mm: Mm): void {
    if (!this.looking) this.set_mm = this.height_mm;
    this.held = true;
    this.at_mm = z_mm;
    this.show(z_mm);
  }
  /** The press ends: the height is the one that was pressed. */
  release(): void {
    if (this.held) this.set_mm = this.shown_mm;
    this.held = false;
  }
  /** The pointer leaves, or the system takes it away: back to the height that was set. */
  leave(): void {
    if (this.looking) this.bench.setView({ height_mm: this.set_mm! });
    [this.set_mm, this.shown_mm, this.at_mm, this.held] = [null, null, null, false];
  }
}

interface Seen {
  /** Under the pointer. */
  readonly at_mm: Mm;
  readonly kept_mm: Mm | null;
}

export interface HeightPointer {
  readonly hovered_mm: Mm | null;
  /** The height that was set, while another one is looked at. */
  readonly kept_mm: Mm | null;
  readonly handlers: {
    onPointerDown(event: PointerEvent<HTMLElement>): void;
    onPointerMove(event: PointerEvent<HTMLElement>): void;
    onPointerUp(event: PointerEvent<HTMLElement>): void;
    onPointerLeave(): void;
    onPointerCancel(): void;
  };
}

export function useHeightPointer(axis: ZAxis): HeightPointer {
  const bench = useWorkbench();
  const look = useMemo(() => new HeightLook(bench), [bench]);
  useEffect(() => () => look.leave(), [look]);
  const [seen, setSeen] = useState<Seen | null>(null);
  const height_mm = useBench((state) => state.view.height_mm);
  const follow = (event: PointerEvent<HTMLElement>, act: (z_mm: Mm) => void): void => {
    const top = event.clientY - event.currentTarget.getBoundingClientRect().top;
    const at_mm = roundMm(axis.toMm(top));
    act(at_mm);
    setSeen({ at_mm, kept_mm: look.kept_mm });
  };
  const away = (): void => {
    look.leave();
    setSeen(null);
  };
  return {
    hovered_mm: seen?.at_mm ?? null,
    kept_mm: seen?.at_mm === height_mm ? seen.kept_mm : null,
    handlers: {
      onPointerDown: (event) => {
        if (event.button !== 0) return;
        event.currentTarget.setPointerCapture(event.pointerId);
        follow(event, (z_mm) => look.press(z_mm));
      },
      // what is dragged across from elsewhere looks at nothing here
      onPointerMove: (event) => {
        if (event.buttons === 0 || look.pressed) follow(event, (z_mm) => look.move(z_mm));
      },
      onPointerUp: () => look.release(),
      onPointerLeave: away,
      onPointerCancel: away,
    },
  };
}
