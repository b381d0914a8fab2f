/**
 * The sheet: header, list, plan, readout, elevation, time per layer, title block, and what opens over it. The one place
 * where commands meet the page (files, dialogs, keys, drops).
 */
import { Tooltip } from 'radix-ui';
import { lazy, Suspense, useCallback, useEffect, useMemo, useState } from 'react';
import { BenchProvider } from '../canvas/bench';
import { Elevation } from '../canvas/Elevation';
import { Plan } from '../canvas/Plan';
import { useTheme } from '../canvas/theme';
import { TimePerLayer } from '../canvas/TimePerLayer';
import { listenToKeys } from '../commands/keyboard';
import { listenToDrops, pagePorts } from '../commands/pagePorts';
import type { Context, Ports } from '../commands/types';
import { Header } from '../panels/header/Header';
import { Readout } from '../panels/readout/Readout';
import { TitleBlock } from '../panels/title/TitleBlock';
import { CommandProvider } from '../panels/useCommands';
import { HeightBar } from '../panels/views/HeightBar';
import { ToolBar, ZoomButtons } from '../panels/views/ToolBar';
import type { Workbench as Bench } from '../store/types';
import { ErrorBoundary } from './ErrorBoundary';
import type { ListTab } from './ListColumn';
import { ListColumn } from './ListColumn';
import { Notices } from './Notices';
import { EmptyPlate, FirstRun } from './PlanNotes';
import { useDropMark } from './useDropMark';
import '../panels/tokens.css';
import '../panels/controls/controls.css';
import './workbench.css';
import './overlays.css';

const HelpDialog = lazy(() => import('./HelpDialog'));
const AboutDialog = lazy(() => import('./AboutDialog'));
const CopiesDialog = lazy(() => import('./CopiesDialog'));
const ImportCheck = lazy(() => import('./ImportCheck'));

type Open =
  { readonly kind: 'help' | 'about' | 'copies' } | { readonly kind: 'import'; readonly file: File } | null;
interface ListState {
  readonly tab: ListTab;
  readonly open: boolean;
}

function OpenDialog({ open, onClose }: { readonly open: Open; onClose(): void }) {
  if (open === null) return null;
  return (
    <Suspense fallback={null}>
      {open.kind === 'help' && <HelpDialog onClose={onClose} />}
      {open.kind === 'about' && <AboutDialog onClose={onClose} />}
      {open.kind === 'copies' && <CopiesDialog onClose={onClose} />}
      {open.kind === 'import' && <ImportCheck file={open.file} onClose={onClose} />}
    </Suspense>
  );
}

/** The ground in force, for every token of tokens.css. */
function Ground() {
  const theme = useTheme();
  useEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  return null;
}

/** Commands bound to this page: dialogs, the check page, the list's tabs. */
function usePage(bench: Bench) {
  const [open, setOpen] = useState<Open>(null);
  const [list, setList] = useState<ListState>({ tab: 'parts', open: false });
  const context = useMemo((): Context => {
    const showDialog: Ports['showDialog'] = (dialog) => {
      if (dialog === 'machine' || dialog === 'process') setList({ tab: dialog, open: true });
      else setOpen({ kind: dialog });
    };
    const showImport = (file: File): void => setOpen({ kind: 'import', file });
    return { bench, ports: pagePorts(document, { showDialog, showImport }) };
  }, [bench]);
  useEffect(() => listenToKeys(window, context), [context]);
  useEffect(() => listenToDrops(window, context), [context]);
  const close = useCallback(() => setOpen(null), []);
  return { open, close, list, setList, context };
}

function PlanView() {
  return (
    <section className="view plan" aria-label="Plan">
      <div className="view-head">
        <h2>PLAN</h2>
        <ToolBar />
        <span className="view-gap" />
        <ZoomButtons />
      </div>
      <div className="view-body">
        <Plan />
        <EmptyPlate />
        <FirstRun />
      </div>
    </section>
  );
}

function LowerViews() {
  return (
    <>
      <section className="view elevation" aria-label="Elevation">
        <div className="view-head height-bar">
          <h2>ELEVATION</h2>
          <HeightBar />
        </div>
        <div className="view-body">
          <Elevation />
        </div>
      </section>
      <section className="view times" aria-label="Time per layer">
        <div className="view-head">
          <h2>TIME PER LAYER</h2>
        </div>
        <div className="view-body">
          <TimePerLayer />
        </div>
      </section>
    </>
  );
}

function Page({ bench }: { readonly bench: Bench }) {
  const { open, close, list, setList, context } = usePage(bench);
  const dropping = useDropMark();
  return (
    <CommandProvider context={context}>
      <Ground />
      <main className="bench" data-drop={dropping || undefined}>
        <Header />
        <ListColumn
          tab={list.tab}
          open={list.open}
          onTab={(tab) => setList((now) => ({ ...now, tab }))}
          onOpen={(shown) => setList((now) => ({ ...now, open: shown }))}
        />
        <PlanView />
        <Readout />
        <LowerViews />
        <TitleBlock />
      </main>
      <Notices />
      <OpenDialog open={open} onClose={close} />
    </CommandProvider>
  );
}

/** The whole page for one workbench. */
export function Workbench({
  bench,
  download,
}: {
  readonly bench: Bench;
  readonly download: Ports['download'];
}) {
  return (
    <ErrorBoundary bench={bench} download={download}>
      <BenchProvider bench={bench}>
        <Tooltip.Provider delayDuration={400} skipDelayDuration={200}>
          <Page bench={bench} />
        </Tooltip.Provider>
      </BenchProvider>
    </ErrorBoundary>
  );
}
