/**
 * The sheet: header, list, plan, readout, elevation, time per layer, title block, and what opens over it. The one place
 * where commands meet the page (files, dialogs, keys, drops).
 */
import { t } from '../language/index';
import type { ReactNode } from 'react';
import { Suspense, useCallback, useContext, useEffect, useLayoutEffect, useMemo, useState } from 'react';
import { BenchProvider, useWorkbench } from '../canvas/bench';
import { Plan, type PlanMenuProps } from '../canvas/Plan';
import { useTheme } from '../canvas/theme';
import type { EarlyKeys } from '../commands/earlyKeys';
import { pagePorts } from '../commands/pagePorts';
import type { Context, Ports } from '../commands/types';
import { CommandContext } from '../panels/commandContext';
import { Readout } from '../panels/readout/Readout';
import type { Workbench as Bench } from '../store/types';
import { ErrorBoundary } from './ErrorBoundary';
import type { ListTab } from './ListColumn';
import { DialogBoundary } from './DialogBoundary';
import { FirstRun } from './FirstRun';
import type { Open } from './OpenDialog';
import { afterPaint, later, onceDrawn } from '../canvas/later';
import { useDropMark } from './useDropMark';
import '../panels/tokens.css';
import '../panels/controls/controls.css';
import './workbench.css';

const aroundPlate = () => import('./aroundPlate');
const Header = later(async () => (await aroundPlate()).Header);
const PlanHead = later(async () => (await aroundPlate()).PlanHead);
const EmptyPlate = later(async () => (await aroundPlate()).EmptyPlate);
const ListColumn = later(async () => (await aroundPlate()).ListColumn);
const LowerViews = later(async () => (await aroundPlate()).LowerViews);
const TitleBlock = later(async () => (await aroundPlate()).TitleBlock);
const Spoken = later(async () => (await aroundPlate()).Spoken);
const Notices = later(async () => (await aroundPlate()).Notices);
const OpenDialog = later(async () => (await aroundPlate()).OpenDialog);
const MenuOverPlan = onceDrawn(async () => (await import('../panels/planMenu/PlanMenu')).default);

/** Where its code does not arrive, the menu closes and a message says so; the plan stays. */
function PlanMenu(props: PlanMenuProps) {
  return (
    <DialogBoundary bench={useWorkbench()} onClose={props.onClose}>
      <MenuOverPlan {...props} />
    </DialogBoundary>
  );
}

interface ListState {
  readonly tab: ListTab;
  readonly open: boolean;
}

/** What is open once the present dialog is closed. */
function afterClosing(open: Open | null): Open | null {
  if (open?.kind !== 'import') return null;
  const [, next, ...rest] = open.files;
  return next ? { ...open, files: [next, ...rest], turn: open.turn + 1 } : null;
}

const withFile = (open: Open | null, file: File): Open =>
  open?.kind === 'import'
    ? { ...open, files: [...open.files, file] }
    : { kind: 'import', files: [file], turn: 1 };

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
  const [open, setOpen] = useState<Open | null>(null);
  const [list, setList] = useState<ListState>({ tab: 'parts', open: false });
  const [keysHeard, setKeysHeard] = useState(false);
  const context = useMemo((): Context => {
    const showDialog: Ports['showDialog'] = (dialog) => {
      if (dialog === 'machine' || dialog === 'process' || dialog === 'calendar')
        setList({ tab: dialog, open: true });
      else {
        // what was said before has been read; in a dialog it would look like the dialog's own
        for (const { id } of bench.store.getState().view.notices) bench.dismissNotice(id);
        setOpen({ kind: dialog });
      }
    };
    const showImport = (file: File): void => setOpen((now) => withFile(now, file));
    const showComparison: Ports['showComparison'] = (linked) => setOpen({ kind: 'compare', linked });
    const showTable: Ports['showTable'] = (text) => setOpen({ kind: 'table', text });
    return { bench, ports: pagePorts(document, { showDialog, showImport, showComparison, showTable }) };
  }, [bench]);
  useEffect(() => {
    let stop: (() => void)[] | null = [];
    void afterPaint(aroundPlate).then(({ listenToKeys, listenToLinks, listenToDrops, rememberMarks }) => {
      if (stop === null) return;
      stop = [
        listenToKeys(window, context, early),
        listenToLinks(window, context),
        listenToDrops(window, context),
        rememberMarks(context.bench.store),
      ];
      setKeysHeard(true);
    });
    return () => {
      for (const each of stop ?? []) each();
      stop = null;
    };
  }, [context, early]);
  const close = useCallback(() => setOpen(afterClosing), []);
  return { open, close, list, setList, context, keysHeard };
}

function PlanView() {
  return (
    <section className="view plan" aria-label={t('Plan')}>
      <div className="view-head">
        <h2>{t('PLAN')}</h2>
        <Suspense fallback={null}>
          <PlanHead />
        </Suspense>
      </div>
      <FirstRun />
      <div className="view-body">
        <Plan Menu={PlanMenu} />
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

interface PlaceProps {
  readonly name: string;
  readonly className: string;
  readonly children: ReactNode;
}

/** A place of the sheet that fails on its own. */
function Place({ name, ...rest }: PlaceProps) {
  const { bench, ports } = useContext(CommandContext)!;
  return <ErrorBoundary bench={bench} download={ports.download} place={name} {...rest} />;
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
        <Place name={t('The header')} className="header">
          <Suspense fallback={<header className="header" />}>
            <Header />
          </Suspense>
        </Place>
        <Place name={t('The list')} className="view list">
          <Suspense fallback={<div className="view list" />}>
            <ListColumn
              tab={list.tab}
              open={list.open}
              onTab={(tab) => setList((now) => ({ ...now, tab }))}
              onOpen={(shown) => setList((now) => ({ ...now, open: shown }))}
            />
          </Suspense>
        </Place>
        <Place name={t('The plan')} className="view plan">
          <PlanView />
          <Suspense fallback={null}>
            <Spoken />
          </Suspense>
        </Place>
        <Place name={t('The readout')} className="view readout">
          <Readout />
        </Place>
        <Place name={t('The elevation')} className="view elevation">
          <Suspense fallback={<WaitingViews />}>
            <LowerViews />
          </Suspense>
        </Place>
        <Place name={t('The title block')} className="title-block">
          <Suspense fallback={<footer className="title-block" />}>
            <TitleBlock />
          </Suspense>
        </Place>
        <Suspense fallback={null}>
          <Notices />
        </Suspense>
      </main>
      <Suspense fallback={null}>{open && <OpenDialog open={open} onClose={close} />}</Suspense>
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
