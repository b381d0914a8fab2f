/**
 * The workbench's store: one document with its history, one view. History is zundo's, over the layout alone, so
 * looking and selecting never make or clear an entry; a gesture pauses it and leaves one entry when it ends.
 * Units as in the layout (millimetres, seconds, degrees).
 */
import { temporal } from 'zundo';
import { createStore } from 'zustand/vanilla';
import { analyse as engineAnalyse } from '../build/analyse';
import type { Analysis } from '../build/types';
import type { Fault } from '../layout/result';
import type { Layout } from '../layout/types';
import { sameValue } from './same';
import { settled } from './settle';
import type { View, Workbench, WorkbenchState } from './types';

/** Entries kept: each holds references to what did not change, so 500 cost little. */
const HISTORY_LIMIT = 500;
/** Notices shown at once; the oldest gives way. */
const NOTICE_LIMIT = 4;

export interface WorkbenchOptions {
  readonly layout: Layout;
  /** The engine's own where not given. */
  readonly analyse?: (layout: Layout) => Analysis;
  readonly view?: Partial<View>;
  /** Entries of history kept. */
  readonly historyLimit?: number;
}
type Tracked = Pick<WorkbenchState, 'layout' | 'lastChange'>;
type Step = Partial<Tracked>;

const FIRST_VIEW: View = {
  height_mm: 0,
  selection: [],
  hover: null,
  tool: 'select',
  camera: null,
  fitted: null,
  activeLine: 0,
  activeZone: null,
  notices: [],
  theme: 'system',
  firstRunDismissed: false,
  drawHeight_mm: 20,
};

const tracked = ({ layout, lastChange }: WorkbenchState): Tracked => ({ layout, lastChange });

function buildStore({ layout, view, historyLimit = HISTORY_LIMIT }: WorkbenchOptions) {
  const first: WorkbenchState = { layout, view: { ...FIRST_VIEW, ...view }, lastChange: null };
  const store = createStore<WorkbenchState>()(
    settled(
      temporal(() => first, {
        partialize: tracked,
        limit: historyLimit,
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
  let open: { readonly label: string; readonly start: Tracked } | null = null;
  const record = (start: Step) => {
    const past = store.temporal.getState().pastStates;
    store.temporal.setState({ pastStates: [...past, start].slice(-limit), futureStates: [] });
  };
  const end = () => {
    if (!open) return;
    const { start } = open;
    const moved = !sameValue(start.layout, store.getState().layout);
    if (!moved) store.setState(start);
    open = null;
    resume();
    if (moved) record(start);
  };
  return {
    label: () => open?.label ?? null,
    open: () => open !== null,
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

/** The analysis of one layout, kept until another layout is asked for. */
function remembered(analyse: (layout: Layout) => Analysis) {
  let last: { readonly layout: Layout; readonly analysis: Analysis } | null = null;
  return (layout: Layout): Analysis => {
    if (last?.layout !== layout) last = { layout, analysis: analyse(layout) };
    return last.analysis;
  };
}

function notices(store: Store) {
  let nextId = 1;
  const put = (change: (held: View['notices']) => View['notices']) =>
    store.setState(({ view }) => ({ view: { ...view, notices: change(view.notices) } }));
  return {
    notify: (fault: Fault) => put((held) => [...held, { id: nextId++, fault }].slice(-NOTICE_LIMIT)),
    dismissNotice: (id: number) => put((held) => held.filter((notice) => notice.id !== id)),
  };
}

/**
 * A workbench holding `layout`. `analyse` is called at most once per layout and only when someone asks.
 * A recipe that throws leaves the layout, the history and an open gesture as they were.
 */
export function createWorkbench(options: WorkbenchOptions): Workbench {
  const store = buildStore(options);
  const gesture = gestures(store, options.historyLimit ?? HISTORY_LIMIT);
  const analysisOf = remembered(options.analyse ?? engineAnalyse);
  const history = store.temporal.getState;
  return {
    store,
    analysis: () => analysisOf(store.getState().layout),
    change: (label, recipe) => {
      const before = store.getState().layout;
      const layout = recipe(before);
      if (!sameValue(before, layout)) store.setState({ layout, lastChange: gesture.label() ?? label });
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
    onHistory: (listener) => store.temporal.subscribe(listener),
    setView: (patch) => store.setState(({ view }) => ({ view: { ...view, ...patch } })),
    ...notices(store),
  };
}
