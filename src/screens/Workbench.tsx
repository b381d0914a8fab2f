/**
 * The sheet: header, list, plan, readout, elevation, time per layer, title block, and what opens over it. The one place
 * where commands meet the page (files, dialogs, keys, drops).
 */
import { lazy, Suspense, useCallback, useEffect, useLayoutEffect, useMemo, useState } from 'react';
import { BenchProvider, useWorkbench } from '../canvas/bench';
import { Plan } from '../canvas/Plan';
import { useTheme } from '../canvas/theme';
import type { EarlyKeys } from '../commands/earlyKeys';
import { kindOf } from '../commands/file/fileKind';
import { listenToDrops, pagePorts } from '../commands/pagePorts';
import type { Context, Ports } from '../commands/types';
import { CommandContext } from '../panels/commandContext';
import { Readout } from '../panels/readout/Readout';
import type { Workbench as Bench } from '../store/types';
import { DialogBoundary } from './DialogBoundary';
import { ErrorBoundary } from './ErrorBoundary';
import type { ListTab } from './ListColumn';
import { FirstRun } from './FirstRun';
import { afterPaint, later } from '../canvas/later';
import { useDropMark } from './useDropMark';
import { useTypedLine } from './useTypedLine';
import '../panels/tokens.css';
import '../panels/header/header.css';
import '../panels/controls/controls.css';
import './workbench.css';
import './overlays.css';

const Header = later(() => import('../panels/header/Header').then((m) => m.Header));
const PlanHead = later(() => import('../panels/views/ToolBar').then((m) => m.PlanHead));
const EmptyPlate = later(() => import('./EmptyPlate').then((m) => m.EmptyPlate));
const ListColumn = later(() => import('./ListColumn').then((m) => m.ListColumn));
const LowerViews = later(() => import('./LowerViews').then((m) => m.LowerViews));
const TitleBlock = later(() => import('../panels/title/TitleBlock').then((m) => m.TitleBlock));
const Notices = later(() => import('./Notices').then((m) => m.Notices));
const HelpDialog = lazy(() => import('./HelpDialog'));
const AboutDialog = lazy(() => import('./AboutDialog'));
const CopiesDialog = lazy(() => import('./CopiesDialog'));
const ImportCheck = lazy(() => import('./ImportCheck'));
const MeshCheck = lazy(() => import('./MeshCheck'));

type Open =
  | { readonly kind: 'help' | 'about' | 'copies' }
  /** Files dropped together are checked one after the other. */
  | {
      readonly kind: 'import';
      readonly files: readonly [File, ...File[]];
      /** Of the first one in the row, so that each gets a page of its own. */
      readonly turn: number;
    }
  | null;
interface ListState {
  readonly tab: ListTab;
  readonly open: boolean;
}

/** The check page of the first file; the others follow when it is closed. */
function FileCheck({ file, onClose }: { readonly file: File; onClose(): void }) {
  const Check = kindOf(file.name) === 'mesh' ? MeshCheck : ImportCheck;
  return <Check file={file} onClose={onClose} />;
}

/** What is open once the present dialog is closed. */
function afterClosing(open: Open): Open {
  if (open?.kind !== 'import') return null;
  const [, next, ...rest] = open.files;
  return next ? { ...open, files: [next, ...rest], turn: open.turn + 1 } : null;
}

const withFile = (open: Open, file: File): Open =>
  open?.kind === 'import'
    ? { ...open, files: [...open.files, file] }
    : { kind: 'import', files: [file], turn: 1 };

function OpenDialog({ open, onClose }: { readonly open: Open; onClose(): void }) {
  const bench = useWorkbench();
  if (open === null) return null;
  return (
    <DialogBoundary key={open.kind === 'import' ? open.turn : open.kind} bench={bench} onClose={onClose}>
      <Suspense fallback={null}>
        {open.kind === 'help' && <HelpDialog onClose={onClose} />}
        {open.kind === 'about' && <AboutDialog onClose={onClose} />}
        {open.kind === 'copies' && <CopiesDialog onClose={onClose} />}
        {open.kind === 'import' && <FileCheck key={open.turn} file={open.files[0]} onClose={onClose} />}
      </Suspense>
    </DialogBoundary>
  );
}

/** The ground in force, for every token of tokens.css. */
function Ground() {
  const theme = useTheme();
  useLayoutEffect(() => {
    document.documentElement.dataset['theme'] = theme;
  }, [theme]);
  return null;
}

/** Commands bound to this page: dialogs, the check page, the list's tabs. */
function usePage(bench: Bench, early: EarlyKeys) {
  const [open, setOpen] = useState<Open>(null);
  const [list, setList] = useState<ListState>({ tab: 'parts', open: false });
  const [keysHeard, setKeysHeard] = useState(false);
  const context = useMemo((): Context => {
    const showDialog: Ports['showDialog'] = (dialog) => {
      if (dialog === 'machine' || dialog === 'process' || dialog === 'calendar')
        setList({ tab: dialog, open: true });
      else setOpen({ kind: dialog });
    };
    const showImport = (file: File): void => setOpen((now) => withFile(now, file));
    return { bench, ports: pagePorts(document, { showDialog, showImport }) };
  }, [bench]);
  useEffect(() => {
    let stop: (() => void) | null = null;
    let gone = false;
    void afterPaint(() => import('../commands/keyboard')).then(({ listenToKeys }) => {
      if (gone) return;
      stop = listenToKeys(window, context, early);
      setKeysHeard(true);
    });
    return () => {
      gone = true;
      stop?.();
    };
  }, [context, early]);
  useEffect(() => listenToDrops(window, context), [context]);
  const close = useCallback(() => setOpen(afterClosing), []);
  useTypedLine(useCallback(() => setList({ tab: 'division', open: true }), []));
  return { open, close, list, setList, context, keysHeard };
}

function PlanView() {
  return (
    <section className="view plan" aria-label="Plan">
      <div className="view-head">
        <h2>PLAN</h2>
        <Suspense fallback={null}>
          <PlanHead />
        </Suspense>
      </div>
      <FirstRun />
      <div className="view-body">
        <Plan />
        <Suspense fallback={null}>
          <EmptyPlate />
        </Suspense>
      </div>
    </section>
  );
}

/** Keeps the places of the lower views while they load. */
function WaitingViews() {
  return (
    <>
      <div className="view elevation" />
      <div className="view times" />
    </>
  );
}

interface PageProps {
  readonly bench: Bench;
  /** Keys pressed since the page began to load. */
  readonly early: EarlyKeys;
}

function Page({ bench, early }: PageProps) {
  const { open, close, list, setList, context, keysHeard } = usePage(bench, early);
  const dropping = useDropMark();
  return (
    <CommandContext value={context}>
      <Ground />
      <main className="bench" data-drop={dropping || undefined} data-keys={keysHeard || undefined}>
        <Suspense fallback={<header className="header" />}>
          <Header />
        </Suspense>
        <Suspense fallback={<div className="view list" />}>
          <ListColumn
            tab={list.tab}
            open={list.open}
            onTab={(tab) => setList((now) => ({ ...now, tab }))}
            onOpen={(shown) => setList((now) => ({ ...now, open: shown }))}
          />
        </Suspense>
        <PlanView />
        <Readout />
        <Suspense fallback={<WaitingViews />}>
          <LowerViews />
        </Suspense>
        <Suspense fallback={<footer className="title-block" />}>
          <TitleBlock />
        </Suspense>
        <Suspense fallback={null}>
          <Notices />
        </Suspense>
      </main>
      <OpenDialog open={open} onClose={close} />
    </CommandContext>
  );
}

/** The whole page for one workbench. */
export function Workbench({ bench, early, download }: PageProps & { readonly download: Ports['download'] }) {
  return (
    <ErrorBoundary bench={bench} download={download}>
      <BenchProvider bench={bench}>
        <Page bench={bench} early={early} />
      </BenchProvider>
    </ErrorBoundary>
  );
}
