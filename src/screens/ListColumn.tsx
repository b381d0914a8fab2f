/**
 * The left column: parts, division, machine, process, calendar behind tabs, problems below. On narrow screens only a rail of
 * pictures stands; a press lays the column over the plan, Escape or a second press puts it away.
 */
import { t, type Text } from '../language/index';
import { Tabs } from 'radix-ui';
import type { ReactNode } from 'react';
import { onceDrawn } from '../canvas/later';
import { Suspense, useCallback } from 'react';
import { useAnalysisLater } from '../canvas/bench';
import { PartsPanel } from '../panels/parts/PartsPanel';
import { ProblemList } from '../panels/parts/ProblemList';
import { DivisionIcon } from '../panels/division/icons';
import { useTypedLine } from './useTypedLine';
import './list.css';

const DivisionPanel = onceDrawn(async () => (await import('../panels/division/DivisionPanel')).DivisionPanel);
const MachinePanel = onceDrawn(async () => (await import('../panels/machine/MachinePanel')).MachinePanel);
const ProcessPanel = onceDrawn(async () => (await import('../panels/process/ProcessPanel')).ProcessPanel);
const SchedulePanel = onceDrawn(async () => (await import('../panels/schedule/SchedulePanel')).SchedulePanel);

export type ListTab = 'parts' | 'division' | 'machine' | 'process' | 'calendar';

interface Entry {
  readonly tab: ListTab;
  readonly label: Text;
  readonly picture: ReactNode;
  readonly panel: ReactNode;
}

const line = (d: string): ReactNode => (
  <svg width="17" height="17" viewBox="0 0 17 17" aria-hidden="true" fill="none" stroke="currentColor">
    <path d={d} strokeWidth="1.5" />
  </svg>
);

const ENTRIES: readonly Entry[] = [
  {
    tab: 'parts',
    label: 'Parts',
    picture: line('M2 3.5h13M2 8.5h13M2 13.5h13'),
    panel: <PartsPanel />,
  },
  {
    tab: 'division',
    label: 'Division',
    picture: <DivisionIcon choice="quadrants" />,
    panel: <DivisionPanel />,
  },
  {
    tab: 'machine',
    label: 'Machine',
    picture: line('M2 15.5V9.5h13v6M4 9.5l4.5-8 4.5 8'),
    panel: <MachinePanel />,
  },
  {
    tab: 'process',
    label: 'Process',
    picture: line('M2 14 14 2M2 9l7-7M7 15l8-8'),
    panel: <ProcessPanel />,
  },
  {
    tab: 'calendar',
    label: 'Calendar',
    picture: line('M2 3.5h13v12H2zM2 7.5h13M5.5 1v4M11.5 1v4M8.5 10v3h3'),
    panel: <SchedulePanel />,
  },
];

interface ListColumnProps {
  readonly tab: ListTab;
  /** Narrow screens: the column lies over the plan. */
  readonly open: boolean;
  onTab(tab: ListTab): void;
  onOpen(open: boolean): void;
}

function RailProblems({ onOpen }: { onOpen(): void }) {
  const { problems, checks } = useAnalysisLater();
  return (
    <button
      type="button"
      className="rail-problems"
      aria-label={
        checks > 0 ? t('{problems} problems', { problems: problems.length }) : t('Problems, being checked')
      }
      data-warn={problems.length > 0 || undefined}
      onClick={onOpen}
    >
      {checks > 0 ? problems.length : '…'}
    </button>
  );
}

/** The tabs and, on narrow screens, how many problems there are. */
const TabRow = ({ onPress, onProblems }: { onPress(tab: ListTab): void; onProblems(): void }) => (
  <Tabs.List className="tabs" aria-label={t('Lists and settings')}>
    {ENTRIES.map(({ tab, label, picture }) => (
      <Tabs.Trigger
        key={tab}
        className="tab"
        value={tab}
        title={t(label)}
        data-testid={`tab-${tab}`}
        onClick={() => onPress(tab)}
      >
        <span className="tab-picture">{picture}</span>
        <span className="tab-label">{t(label)}</span>
      </Tabs.Trigger>
    ))}
    <RailProblems onOpen={onProblems} />
  </Tabs.List>
);

/** The column: tabs, the panel of the chosen one, the problems below it. */
export function ListColumn({ tab, open, onTab, onOpen }: ListColumnProps) {
  const press = (next: ListTab): void => {
    onOpen(next !== tab || !open);
    onTab(next);
  };
  const showDivision = useCallback(() => {
    onOpen(true);
    onTab('division');
  }, [onOpen, onTab]);
  useTypedLine(showDivision);
  return (
    <Tabs.Root
      className="view list"
      value={tab}
      orientation="horizontal"
      activationMode="manual"
      data-open={open || undefined}
      onKeyDown={(event) => {
        if (event.key === 'Escape' && open) onOpen(false);
      }}
    >
      <TabRow onPress={press} onProblems={() => onOpen(!open)} />
      <div className="list-body">
        {ENTRIES.map((entry) => (
          <Tabs.Content key={entry.tab} className="tab-panel" value={entry.tab} tabIndex={-1}>
            <Suspense fallback={<p className="hint">{t('Loading …')}</p>}>{entry.panel}</Suspense>
          </Tabs.Content>
        ))}
        <ProblemList />
      </div>
    </Tabs.Root>
  );
}
