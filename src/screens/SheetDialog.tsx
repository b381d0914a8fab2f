/**
 * The operator's sheet as it prints, with print and PDF. Both wait until all that stands on it is known.
 */
import { t, type Text } from '../language/index';
import { useContext, useState } from 'react';
import { useWorkbench } from '../canvas/bench';
import { exportName } from '../export/forUse';
import { CommandContext } from '../panels/commandContext';
import { inWords, Pick } from './handOver/FileRow';
import { useSaid } from '../panels/spoken/say';
import { Sheet } from './Sheet';
import { pageElement, PrintPages, SheetPages } from './sheet/SheetPages';
import { useSheet, type SheetDesk } from './sheet/useSheet';
import type { Paper } from './sheet/pdf';
import './handOver/handOver.css';
import './sheet/sheet.css';

const HEIGHTS: Record<'fullest' | 'shown', Text> = {
  fullest: 'where most parts are exposed',
  shown: 'at the height shown',
};
const PAPER_WORDS: Record<Paper, string> = { A4: 'A4', Letter: 'Letter', A3: 'A3' };

function Waiting({ waiting, share, fault }: SheetDesk) {
  useSaid(waiting);
  if (fault !== null)
    return (
      <p className="sheet-wait" role="alert">
        {t('The sheet could not be made: {detail}. Close it and try again.', { detail: fault })}
      </p>
    );
  return (
    <p className="sheet-wait" data-testid="sheet-waiting">
      {waiting} …
      <progress value={share} aria-label={t('Sheet, being made')} />
    </p>
  );
}

function useSavePdf(desk: SheetDesk, paper: Paper) {
  const bench = useWorkbench();
  const ports = useContext(CommandContext)?.ports;
  const [saving, setSaving] = useState(false);
  const [done, setDone] = useState('');
  const make = async (): Promise<void> => {
    const { content, fonts, checksum, pages } = desk;
    if (content === null || fonts === null) return;
    const { layout } = bench.store.getState();
    const name = exportName({ layout, checksum, blocked: content.blocked }, 'sheet.pdf');
    const { sheetPdf } = await import('./sheet/pdf');
    const bytes = await sheetPdf(
      pages.map(pageElement),
      t('Sheet of {name}', { name: content.name }),
      paper,
      fonts,
    );
    ports?.download(name, bytes, 'application/pdf');
    setDone(name);
  };
  const save = async (): Promise<void> => {
    setSaving(true);
    try {
      await make();
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      bench.notify({ code: 'export-failed', params: { detail } });
    }
    setSaving(false);
  };
  return { saving, done, save: (): void => void save() };
}

/** What the pages come to, in words: how many, and what is missing from them. */
function standing({ content, pages, waiting }: SheetDesk): string {
  if (waiting !== null || content === null) return '';
  const count =
    pages.length === 1
      ? t('One page.')
      : t('{pages} pages: not all has room on one, and the first says what is on the others.', {
          pages: pages.length,
        });
  return content.blocked
    ? t('{count} Something blocks hand-over: every page says NOT FOR USE.', { count })
    : count;
}

interface BarProps {
  readonly desk: SheetDesk;
  readonly at: keyof typeof HEIGHTS;
  readonly ready: boolean;
  onAt(at: keyof typeof HEIGHTS): void;
}

function Bar({ desk, at, ready, onAt }: BarProps) {
  const [paper, setPaper] = useState<Paper>('A4');
  const { saving, done, save } = useSavePdf(desk, paper);
  const news = `${standing(desk)} ${done === '' ? '' : t('Saved {done}.', { done })}`.trim();
  useSaid(news === '' ? null : news);
  return (
    <div className="sheet-bar">
      <Pick
        label={t('plan')}
        value={at}
        options={inWords(HEIGHTS)}
        testId="sheet-height"
        onPick={(value) => onAt(value)}
      />
      <Pick
        label={t('PDF on')}
        value={paper}
        options={PAPER_WORDS}
        testId="sheet-paper"
        onPick={(value) => setPaper(value)}
      />
      <button
        type="button"
        className="button"
        data-testid="sheet-print"
        disabled={!ready}
        onClick={() => window.print()}
      >
        {t('Print')}
      </button>
      <button
        type="button"
        className="button"
        data-testid="sheet-pdf"
        disabled={!ready || saving}
        onClick={save}
      >
        {t('Save as PDF')}
      </button>
      <p className="hint" data-testid="sheet-standing">
        {news}
      </p>
    </div>
  );
}

export default function SheetDialog({ onClose }: { onClose(): void }) {
  const [at, setAt] = useState<keyof typeof HEIGHTS>('fullest');
  const desk = useSheet(at);
  const ready = desk.waiting === null && desk.fault === null;
  return (
    <Sheet title={t('Sheet')} full onClose={onClose}>
      <Bar desk={desk} at={at} ready={ready} onAt={setAt} />
      {ready ? (
        <div className="sheet-ground">
          <SheetPages pages={desk.pages} />
          <PrintPages pages={desk.pages} />
        </div>
      ) : (
        <Waiting {...desk} />
      )}
    </Sheet>
  );
}
