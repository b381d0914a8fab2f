/**
 * The workbench's store: one document with its history, one view. History is zundo's, over the layout alone, so
 * looking and selecting never make or clear an entry; a gesture pauses it and leaves one entry when it ends.
 * Units as in the layout (millimetres, seconds, degrees).
 */
import { temporal } from 'zundo';
import { createStore } from 'zustand/vanilla';
import { analyseLive, analyseWith, fitsAFrame, type KnownHeight } from '../build/analysis';
import type { FindProblems } from '../build/findProblems';
import type { Heights, HeightNews } from '../worker/heights';
import type { Analysis } from '../build/types';
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import { sameValue } from '../layout/same';
import { keepLocked, stillNamed } from './locked';
import { begunFault, broughtBack, createRevising, localDay } from './revising';
import { settled } from './settle';
import type { Moment, Timeline, HeightState, View, Workbench, WorkbenchState } from './types';
import { watchRevisions } from './watchRevisions';

/** Entries kept: each holds references to what did not change, so 500 cost little. */
const HISTORY_LIMIT = 500;
/** Notices shown at once; equal ones are one, the newest; the oldest gives way. */
const NOTICE_LIMIT = 3;

export interface WorkbenchOptions {
  readonly layout: Layout;
  /** The engine's own where not given, with problems as soon as the code that finds them has come. */
  readonly analyse?: (layout: Layout) => Analysis;
  /** Loads the code that finds problems, for the engine's own analysis; begun at once where not given. */
  readonly loadFinder?: () => Promise<FindProblems>;
  /** Computes the whole height of high plates; without it everything is computed at once. */
  readonly heights?: Heights;
  readonly view?: Partial<View>;
  /** What can be undone and redone from `layout`, which is its present. */
  readonly timeline?: Timeline | null;
  /** Entries of history kept. */
  readonly historyLimit?: number;
  /** The day that new revisions get, "2026-11-27"; by the clock of this computer where not given. */
  readonly today?: () => string;
}
type Step = Partial<Moment>;

const NO_HEIGHT: HeightState = { known: null, checksum: null, progress: null, failed: false };
const FIRST_VIEW: View = {
  height_mm: 0,
  selection: [],
  locked: [],
  hidden: [],
  list: { search: '', sort: null },
  hover: null,
  tool: 'select',
  measured: null,
  camera: null,
  fitted: null,
  everything: null,
  planSize: null,
  activeLine: 0,
  activeZone: null,
  notices: [],
  theme: 'system',
  language: 'system',
  wheel: 'zoom',
  firstRunDismissed: false,
  snapping: true,
  grid_mm: 0,
  drawHeight_mm: 20,
};

const tracked = ({ layout, lastChange }: WorkbenchState): Moment => ({ layout, lastChange });

function buildStore({ layout, view, timeline, historyLimit = HISTORY_LIMIT }: WorkbenchOptions) {
  const height = NO_HEIGHT;
  const lastChange = timeline?.present.lastChange ?? null;
  const first: WorkbenchState = { layout, height, find: null, view: { ...FIRST_VIEW, ...view }, lastChange };
  const store = createStore<WorkbenchState>()(
    settled(
      temporal(() => first, {
        partialize: tracked,
        limit: historyLimit,
        pastStates: [...(timeline?.past ?? [])],
        futureStates: [...(timeline?.future ?? [])],
        equality: (past, present) => sameValue(past.layout, present.layout),
      }),
    ),
  );
  store.setState({});
  return store;
}
type Store = ReturnType<typeof buildStore>;

/** Gestures: nothing is recorded until the end, then one entry that leads back to the beginning. */
function gestures(store: Store, limit: number) {
  const { pause, resume } = store.temporal.getState();
  let open: { readonly label: string; readonly start: Moment } | null = null;
  const record = (start: Step) => {
    const past = store.temporal.getState().pastStates;
    store.temporal.setState({ pastStates: [...past, start].slice(-limit), futureStates: [] });
  };
  const end = () => {
    if (!open) return;
    const { start } = open;
    const moved = !broughtBack(start.layout, store.getState().layout);
    if (!moved) store.setState(start);
    open = null;
    resume();
    if (moved) record(start);
  };
  return {
    label: () => open?.label ?? null,
    open: () => open !== null,
    start: () => open?.start ?? null,
    begin: (label: string) => {
      end();
      pause();
      open = { label, start: tracked(store.getState()) };
    },
    end,
    cancel: () => {
      if (!open) return;
      store.setState(open.start);
      open = null;
      resume();
    },
  };
}

type Analyse = (layout: Layout, known: KnownHeight | null, find: FindProblems | null) => Analysis;

/** The analysis of one layout, with what is known of its height and who finds problems, until another one is asked for. */
function remembered(analyse: Analyse) {
  let last: { readonly of: readonly unknown[]; readonly analysis: Analysis } | null = null;
  return ({ layout, height: { known }, find }: WorkbenchState): Analysis => {
    if (last?.of[0] !== layout || last.of[1] !== known || last.of[2] !== find)
      last = { of: [layout, known, find], analysis: analyse(layout, known, find) };
    return last.analysis;
  };
}

/** The engine's own. */
export const loadFindProblems = async (): Promise<FindProblems> =>
  (await import('../build/findProblems')).findProblems;

/** Puts what finds problems into the store once it has come; says so where it does not come. */
async function bringFinder(
  store: Store,
  load: () => Promise<FindProblems>,
  notify: (fault: Fault) => void,
): Promise<void> {
  try {
    const find = await load();
    store.setState({ find });
  } catch {
    notify({ code: 'problems-not-looked-for', params: {} });
  }
}

/** Asks for the whole height of every plate that is too high for a frame, and keeps what becomes known in the store. */
function followHeights(store: Store, heights: Heights, notify: (fault: Fault) => void): void {
  const hear = (news: HeightNews): void => {
    const { layout, height } = store.getState();
    switch (news.kind) {
      case 'progress':
        return store.setState({ height: { ...height, progress: news.share } });
      case 'height': {
        const done = news.known.layout === layout && news.known.every === 1;
        return store.setState({
          height: { ...height, known: news.known, progress: done ? null : (height.progress ?? 0) },
        });
      }
      case 'checksum':
        return store.setState({ height: { ...height, checksum: news } });
      case 'failed':
        store.setState({ height: { ...height, progress: null, failed: true } });
        return notify({ code: 'height-not-computed', params: { detail: news.detail } });
    }
  };
  const follow = (layout: Layout): void => {
    if (fitsAFrame(layout)) {
      if (store.getState().height.progress !== null) store.setState({ height: NO_HEIGHT });
      return;
    }
    store.setState({ height: { ...store.getState().height, progress: 0, failed: false } });
    heights.ask(layout);
  };
  heights.listen(hear);
  store.subscribe((state, before) => {
    if (state.layout !== before.layout) follow(state.layout);
  });
  follow(store.getState().layout);
}

function notices(store: Store) {
  let nextId = 1;
  const put = (change: (held: View['notices']) => View['notices']) =>
    store.setState(({ view }) => ({ view: { ...view, notices: change(view.notices) } }));
  return {
    notify: (fault: Fault) =>
      put((held) => {
        const others = held.filter((notice) => !sameValue(notice.fault, fault));
        return [...others, { id: nextId++, fault }].slice(-NOTICE_LIMIT);
      }),
    dismissNotice: (id: number) => put((held) => held.filter((notice) => notice.id !== id)),
  };
}

/**
 * A workbench holding `layout`. `analyse` is called only when someone asks, at most once per layout while
 * neither what is known of its height nor who finds problems changes.
 * A recipe that throws leaves the layout, the history and an open gesture as they were.
 */
export function createWorkbench(options: WorkbenchOptions): Workbench {
  const store = buildStore(options);
  const gesture = gestures(store, options.historyLimit ?? HISTORY_LIMIT);
  const { analyse: given, loadFinder = loadFindProblems } = options;
  const analysisOf = remembered((layout, known, find) => {
    if (options.heights && !fitsAFrame(layout)) return analyseLive(layout, known);
    return given ? given(layout) : analyseWith(layout, find);
  });
  const told = notices(store);
  const rule = createRevising(options.today ?? (() => localDay(new Date())));
  watchRevisions(store, rule, { gestureOpen: gesture.open, dismissNotice: told.dismissNotice });
  if (options.heights) followHeights(store, options.heights, told.notify);
  if (!given) void bringFinder(store, loadFinder, told.notify);
  const history = store.temporal.getState;
  return {
    store,
    analysis: () => analysisOf(store.getState()),
    change: (label, recipe) => {
      const { layout: before, view } = store.getState();
      const { layout: after, held } = keepLocked(before, recipe(before), view.locked);
      if (held.length > 0) told.notify({ code: 'parts-locked', params: { parts: held.join(', ') } });
      if (sameValue(before, after)) return;
      const layout = rule.edited(before, after);
      store.setState({ layout, lastChange: gesture.label() ?? label });
      if (layout !== after) told.notify(begunFault(before, layout));
    },
    replace: (label, layout) => {
      gesture.end();
      const { layout: before, view } = store.getState();
      if (sameValue(before, layout)) return;
      const named = (ids: View['locked']) => stillNamed(ids, before, layout);
      const { locked, hidden } = view;
      store.setState({
        layout,
        lastChange: label,
        view: { ...view, locked: named(locked), hidden: named(hidden) },
      });
    },
    beginGesture: gesture.begin,
    endGesture: gesture.end,
    cancelGesture: gesture.cancel,
    gestureOpen: gesture.open,
    undo: () => {
      gesture.end();
      history().undo();
    },
    redo: () => {
      gesture.end();
      history().redo();
    },
    history: () => ({
      undo: history().pastStates.length > 0 ? store.getState().lastChange : null,
      redo: history().futureStates.at(-1)?.lastChange ?? null,
    }),
    timeline: () => ({
      past: history().pastStates as readonly Moment[],
      present: gesture.start() ?? tracked(store.getState()),
      future: history().futureStates as readonly Moment[],
    }),
    onHistory: (listener) => store.temporal.subscribe(listener),
    setView: (patch) => store.setState(({ view }) => ({ view: { ...view, ...patch } })),
    ...told,
  };
}
