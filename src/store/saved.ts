/**
 * What the last visit left in the storages: the layout and the lasting parts of the view. What cannot be read back is
 * kept aside, never overwritten. Loaded only where something is saved.
 */
import { readLayout, readLayoutValue } from '../layout/read';
import { fail, ok, type Fault, type Result, type Param } from '../layout/result';
import type { Layout, PartId } from '../layout/types';
import type { Known } from './keeper';
import {
  ASIDE_KEY,
  ASIDE_KEYS,
  drop,
  held,
  LARGE_KEY,
  LAYOUT_KEY,
  OTHER_KEY,
  put,
  TIMELINE_KEY,
  VIEW_KEY,
  type LargeStorage,
  type LoadLarge,
  type WorkStorage,
} from './savedForm';
import { readApart, stampTime } from './apartForm';
import { readTimeline } from './timelineText';
import type { Timeline, View } from './types';

/** Shapes in the large storage that nothing names are given up after this long: another page may be about to name them. */
const LEFT_BEHIND_MS = 7 * 24 * 3600 * 1000;

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text ?? '{}');
    return typeof value === 'object' && value !== null ? { ...value } : {};
  } catch {
    return {};
  }
}

/** The lasting parts of the view; a value that makes no sense is left out and the first view's stands. */
function savedView(storage: WorkStorage | null): Partial<View> {
  const view = parsed(held(storage, VIEW_KEY));
  const { height_mm, theme, language, wheel, firstRunDismissed, drawHeight_mm } = view;
  const { locked, hidden, snapping, grid_mm } = view;
  const ids = (value: unknown): value is PartId[] =>
    Array.isArray(value) && value.every((id) => typeof id === 'string');
  const height = (value: unknown): value is number => typeof value === 'number' && Number.isFinite(value);
  return {
    ...(height(height_mm) ? { height_mm } : {}),
    ...(height(drawHeight_mm) && drawHeight_mm > 0 ? { drawHeight_mm } : {}),
    ...(theme === 'light' || theme === 'dark' || theme === 'system' ? { theme } : {}),
    ...(language === 'en' || language === 'de' || language === 'system' ? { language } : {}),
    ...(typeof snapping === 'boolean' ? { snapping } : {}),
    ...(height(grid_mm) && grid_mm >= 0 ? { grid_mm } : {}),
    ...(ids(locked) ? { locked } : {}),
    ...(ids(hidden) ? { hidden } : {}),
    ...(wheel === 'zoom' || wheel === 'pan' ? { wheel } : {}),
    ...(typeof firstRunDismissed === 'boolean' ? { firstRunDismissed } : {}),
  };
}

/** Without the marks and the height, which belong to the plate that was saved. */
export function ofAnyPlate({ locked: _locked, hidden: _hidden, height_mm: _height, ...view }: Partial<View>) {
  return view;
}

/** The key that the saved layout stands under. */
const layoutKey = (storage: WorkStorage): string =>
  held(storage, LARGE_KEY) === null ? LAYOUT_KEY : LARGE_KEY;

/**
 * Moves the saved layout's text out of autosave's way; the fault to tell, with why it cannot be opened. The text is
 * taken away before it is put down again, so a full storage has room for it; where even that fails it goes back to
 * where it was. Shapes in the large storage stay there under the stamp that the text names.
 */
export function setAside(storage: WorkStorage, detail: Param): Fault {
  const from = layoutKey(storage);
  const text = held(storage, from);
  const to = ASIDE_KEYS.find((key) => held(storage, key) === null) ?? ASIDE_KEYS.at(-1) ?? ASIDE_KEY;
  let key = from;
  if (text !== null) {
    drop(storage, from);
    if (put(storage, to, text)) key = to;
    else put(storage, from, text);
  }
  return { code: 'saved-work-unreadable', params: { detail, key } };
}

/** Why work that can be read is put aside all the same. */
export const WITHOUT_FIGURES: Param = { text: 'the figures of this plate could not be computed.' };

export interface SavedWork {
  /** null: nothing was saved, or what was saved cannot be read. */
  readonly known: Known | null;
  /** What can be undone and redone from it; its present is the very layout that is known. */
  readonly timeline: Timeline | null;
  readonly view: Partial<View>;
  /** What to tell the user; null where all is well. */
  readonly fault: Fault | null;
}

/** Gives up shapes that no saved text names, where they are old. */
async function tidy(storage: WorkStorage, large: LargeStorage): Promise<void> {
  const texts = [LARGE_KEY, OTHER_KEY, ...ASIDE_KEYS].map((key) => held(storage, key) ?? '');
  const left = (stamp: string): boolean =>
    Date.now() - stampTime(stamp) > LEFT_BEHIND_MS && !texts.some((text) => text.includes(stamp));
  for (const stamp of (await large.names()).filter(left)) await large.remove(stamp);
}

/** The layout whose shapes lie apart, or the one before it where they never arrived; null where neither is there. */
async function readApartLayout(text: string, large: LargeStorage): Promise<Result<Known> | null> {
  const apart = readApart(text);
  const shapes = apart && (await large.read(apart.stamp));
  if (!apart || shapes === null)
    return apart?.before === undefined ? null : readApartLayout(apart.before, large);
  const read = readLayoutValue({ ...apart.layout, shapes: JSON.parse(shapes) as Layout['shapes'] });
  if (!read.ok) return read;
  // Shapes written by an older form are written anew with the next change.
  const asWritten = read.value.version === apart.layout.version;
  return ok({ layout: read.value, stamp: asWritten ? apart.stamp : null });
}

async function fromLarge(text: string, load: LoadLarge): Promise<Result<Known> | null> {
  try {
    return await readApartLayout(text, await load());
  } catch {
    return null;
  }
}

/** A layout as autosave writes it, whole or with its shapes apart. Faults: those of readLayout, saved-shapes-missing. */
export async function readSavedText(text: string, load: LoadLarge): Promise<Result<Layout>> {
  if (readApart(text) === null) return readLayout(text);
  const known = await fromLarge(text, load);
  if (known === null) return fail('saved-shapes-missing');
  return known.ok ? ok(known.value.layout) : known;
}

/** The saved layout, or why it cannot be read; null where there is none. */
async function savedLayout(storage: WorkStorage, load: LoadLarge): Promise<Result<Known> | null> {
  const [apart, whole] = [held(storage, LARGE_KEY), held(storage, LAYOUT_KEY)];
  if (apart === null && whole === null) return null;
  const found = apart === null ? null : await fromLarge(apart, load);
  if (found) return found;
  if (whole === null) return fail('saved-shapes-missing');
  drop(storage, LARGE_KEY);
  const read = readLayout(whole);
  return read.ok ? ok({ layout: read.value, stamp: null }) : read;
}

/** The saved layout with its timeline, where that belongs to it: both share what they have in common. */
function withTimeline(storage: WorkStorage, known: Known): Pick<SavedWork, 'known' | 'timeline'> {
  const text = held(storage, TIMELINE_KEY);
  const timeline = text === null ? null : readTimeline(text, known.layout);
  return timeline ? { known: { ...known, layout: timeline.present.layout }, timeline } : { known, timeline };
}

/** What the storages hold from the last visit. */
export async function savedWork(storage: WorkStorage | null, load: LoadLarge): Promise<SavedWork> {
  const view = savedView(storage);
  const found = storage && (await savedLayout(storage, load));
  if (!storage || !found) return { known: null, timeline: null, view, fault: null };
  if (found.ok) {
    if (found.value.stamp !== null)
      void load()
        .then((large) => tidy(storage, large))
        .catch(() => undefined);
    return { ...withTimeline(storage, found.value), view, fault: null };
  }
  return { known: null, timeline: null, view: ofAnyPlate(view), fault: setAside(storage, found.fault) };
}
