/**
 * Side by side: two to four layouts cut at one height and drawn at one zoom, their figures in rows, what changed between
 * them, and what a seam buys.
 */
import { t } from '../language/index';
import { useEffect, useMemo, useRef } from 'react';
import { useStore } from 'zustand';
import { comparedAt } from '../build/compare';
import { useWorkbench } from '../canvas/bench';
import { useSize } from '../canvas/viewport';
import type { AnyLinked } from '../link/index';
import type { Analysis } from '../build/types';
import { buildTop } from '../layout/height';
import { formatField } from '../units/format';
import { parseLength } from '../units/parse';
import { roundMm } from '../units/round';
import { SliderLine } from '../panels/controls/SliderLine';
import { TypedField } from '../panels/controls/TypedField';
import { AddColumn } from './compare/AddColumn';
import { ColumnHead } from './compare/ColumnHead';
import { CompareLink } from './compare/CompareLink';
import {
  addColumn,
  comparison,
  MOST_COLUMNS,
  setCommonHeight,
  showColumns,
  type Columns,
} from './compare/columns';
import { FigureTable } from './compare/FigureTable';
import { useAnalysed, type Found } from './compare/useAnalysed';
import { Sheet } from './Sheet';
import './compare/compare.css';

/** Of the widest platform; the others are drawn at the same zoom. */
const PICTURE_PX = 320;
const LABELS_PX = 220;
const GAP_PX = 16;

/** Widest picture that fits each of so many columns. */
const pictureWidth = (room_px: number, columns: number): number =>
  Math.max(1, Math.min(PICTURE_PX, (room_px - LABELS_PX) / columns - GAP_PX));

const isKnown = (found: Found): found is Analysis => found !== null && found !== 'failed';

function HeightLine({ top_mm, step_mm }: { readonly top_mm: number; readonly step_mm: number }) {
  const height_mm = useStore(comparison, (state) => state.height_mm);
  const shared = { value: roundMm(height_mm), min: 0, max: top_mm, step: step_mm };
  return (
    <div className="compare-height">
      <TypedField
        {...shared}
        clamp
        label="z"
        what="height"
        unit="mm"
        parse={parseLength}
        format={formatField}
        testId="compare-height"
        onCommit={setCommonHeight}
      />
      <SliderLine
        {...shared}
        label={t('Height at which all are cut')}
        valueText={`${formatField(height_mm)} mm`}
        testId="compare-slider"
        onChange={setCommonHeight}
      />
    </div>
  );
}

function Body({ state, onClose }: { readonly state: Columns; onClose(): void }) {
  const { columns, height_mm } = state;
  const layouts = useMemo(() => columns.map(({ layout }) => layout), [columns]);
  const found = useAnalysed(layouts);
  const top_mm = Math.max(1, ...layouts.map(buildTop));
  const step_mm = Math.min(...layouts.map(({ process }) => process.layer_mm));
  const shown = found.map((one) => (isKnown(one) ? comparedAt(one, height_mm) : null));
  const reference = Math.max(
    0,
    columns.findIndex(({ key }) => key === state.reference),
  );
  const table = useRef<HTMLDivElement>(null);
  const picture_px = pictureWidth(useSize(table).width, columns.length);
  const widest_mm = Math.max(...layouts.map(({ machine }) => machine.platform.width_mm));
  return (
    <>
      <HeightLine top_mm={top_mm} step_mm={step_mm} />
      <div
        ref={table}
        className="compare-columns"
        style={{ gridTemplateColumns: `${LABELS_PX}px repeat(${columns.length}, 1fr)` }}
      >
        <p className="hint">
          {t(
            'All are cut at one height and drawn at one zoom. Estimates; figures for several lasers are unvalidated by measurement. No row outweighs another: there is no total score. What leaves something unexposed is not marked as best.',
          )}
        </p>
        {columns.map((column, i) => (
          <ColumnHead
            key={column.key}
            column={column}
            found={found[i] ?? null}
            reference={columns[reference]!}
            pxPerMm={picture_px / widest_mm}
            height_mm={height_mm}
            onClose={onClose}
          />
        ))}
      </div>
      <FigureTable columns={shown} reference={reference} height_mm={height_mm} />
    </>
  );
}

interface CompareProps {
  /** What a link brings, in place of the present comparison. */
  readonly linked?: AnyLinked | undefined;
  onClose(): void;
}

export default function CompareDialog({ linked, onClose }: CompareProps) {
  const bench = useWorkbench();
  useEffect(() => {
    if (linked) return showColumns(t('link'), linked.layouts, linked.view.height_mm ?? 0);
    if (comparison.getState().columns.length > 0) return;
    const { layout, view } = bench.store.getState();
    addColumn(t('open plate'), layout);
    setCommonHeight(view.height_mm);
  }, [bench, linked]);
  const state = useStore(comparison);
  const count = state.columns.length;
  return (
    <Sheet title={t('Side by side')} full onClose={onClose}>
      {count < MOST_COLUMNS ? <AddColumn /> : <p className="hint">{t('Four layouts are the most.')}</p>}
      {count < 2 && (
        <p data-testid="compare-few">
          {t('Two to four layouts stand side by side: add {count} more.', { count: 2 - count })}
        </p>
      )}
      <CompareLink state={state} />
      {count > 0 && <Body state={state} onClose={onClose} />}
    </Sheet>
  );
}
