/** The sheet of the plate that is open: its facts gathered beside the page, its font loaded, its pages drawn. */
import { t } from '../../language/index';
import { useEffect, useMemo, useState } from 'react';
import { useAnalysis, useBench } from '../../canvas/bench';
import { isChecked } from '../../export/forUse';
import { sheetContent } from '../../export/sheet/content';
import { sheetPages } from '../../export/sheet/drawing/sheetSvg';
import type { SheetContent, SheetFacts } from '../../export/sheet/types';
import type { Layout } from '../../layout/types';
import type { Mm } from '../../units/types';
import { gatherSheetFacts } from '../../worker/sheetFactsBeside';
import { FONT, sheetFonts, type SheetFonts } from './fonts';
import { fullestHeight } from './fullestHeight';

interface Gathering {
  readonly layout: Layout;
  /** 0 to 1. */
  readonly share: number;
  readonly facts: SheetFacts | null;
  readonly fault: string | null;
}
export interface SheetDesk {
  /** What is being waited for; null where the pages stand. */
  readonly waiting: string | null;
  readonly share: number;
  /** What went wrong. */
  readonly fault: string | null;
  readonly pages: readonly string[];
  readonly content: SheetContent | null;
  readonly checksum: string;
  readonly fonts: SheetFonts | null;
}

const begun = (layout: Layout): Gathering => ({ layout, share: 0, facts: null, fault: null });

function useFacts(layout: Layout): Gathering {
  const [known, setKnown] = useState(() => begun(layout));
  useEffect(() => {
    return gatherSheetFacts(layout, (news) =>
      setKnown((last) => {
        const now = last.layout === layout ? last : begun(layout);
        if (news.kind === 'facts') return { ...now, share: 1, facts: news.facts };
        return news.kind === 'failed' ? { ...now, fault: news.detail } : { ...now, share: news.share };
      }),
    );
  }, [layout]);
  return known.layout === layout ? known : begun(layout);
}

function useFonts(): { fonts: SheetFonts | null; fault: string | null } {
  const [state, setState] = useState<{ fonts: SheetFonts | null; fault: string | null }>({
    fonts: null,
    fault: null,
  });
  useEffect(() => {
    let current = true;
    sheetFonts().then(
      (fonts) => current && setState({ fonts, fault: null }),
      (error: unknown) => current && setState({ fonts: null, fault: String(error) }),
    );
    return () => {
      current = false;
    };
  }, []);
  return state;
}

/** Day and time as they are written on paper: "2026-11-26 22:05". */
function now(): string {
  const at = new Date();
  const two = (value: number): string => String(value).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())} ${two(at.getHours())}:${two(at.getMinutes())}`;
}

/** @param at where the plan is cut: at the height shown, or where most parts are exposed */
export function useSheet(at: 'shown' | 'fullest'): SheetDesk {
  const analysis = useAnalysis();
  const shown_mm: Mm = useBench((state) => state.view.height_mm);
  const { facts, share, fault } = useFacts(analysis.layout);
  const { fonts, fault: fontFault } = useFonts();
  const checked = isChecked(analysis);
  const [printed] = useState(now);
  const content = useMemo(
    () => (facts && checked ? sheetContent(analysis, facts, printed) : null),
    [analysis, facts, checked, printed],
  );
  const height_mm = at === 'shown' || !facts ? shown_mm : fullestHeight(analysis.layout, facts);
  const pages = useMemo(
    () =>
      content && fonts
        ? sheetPages({ content, analysis, height_mm, font: FONT, measure: fonts.measure })
        : [],
    [content, analysis, height_mm, fonts],
  );
  const wait = (): string | null => {
    if (facts === null) return t('Gathering who exposes what over the whole height');
    if (!checked) return t('The plate is still being checked');
    return fonts === null ? t('Loading the font') : null;
  };
  return {
    waiting: wait(),
    share,
    fault: fault ?? fontFault,
    pages,
    content,
    checksum: facts?.checksum ?? '',
    fonts,
  };
}
