/** The head of one column: what it is, its plan at the common height and zoom, what changed, and what can be done with it. */
import { t } from '../../language/index';
import { useMemo } from 'react';
import { whatChanged } from '../../build/whatChanged';
import { useWorkbench } from '../../canvas/bench';
import { useTheme } from '../../canvas/theme';
import { openLayout } from '../../commands/file/openLayout';
import { planPictureOf, planSvg } from '../../export/plan/planSvg';
import { changeLines } from './changeWords';
import { removeColumn, setReference, type Column } from './columns';
import type { Found } from './useAnalysed';
import { useSum } from './useSum';

interface PictureProps {
  readonly found: Found;
  readonly width_px: number;
  readonly height_mm: number;
}

/** In smaller pictures names would hide the parts. */
const NAMED_FROM_PX = 240;
const PICTURE = 'data:image/svg+xml;charset=utf-8,';

/** The plan as vectors; words in its place while it is being computed. */
export function Picture({ found, width_px, height_mm }: PictureProps) {
  const ground = useTheme();
  const source = useMemo(() => {
    if (found === null || found === 'failed') return '';
    const picture = planSvg(planPictureOf(found, height_mm), {
      width_px,
      ground,
      labels: width_px >= NAMED_FROM_PX,
      rulers: false,
      zoneNumbers: true,
    });
    return PICTURE + encodeURIComponent(picture);
  }, [found, ground, height_mm, width_px]);
  if (found === 'failed') return <p className="field-fault">{t('The figures could not be computed.')}</p>;
  if (found === null) return <p className="hint">{t('Being computed …')}</p>;
  return (
    <img
      className="plan-picture"
      width={Math.round(width_px)}
      src={source}
      alt={t('Plan of {name}', { name: found.layout.name })}
    />
  );
}

interface HeadProps {
  readonly column: Column;
  readonly found: Found;
  readonly reference: Column;
  /** The same in every column. */
  readonly pxPerMm: number;
  readonly height_mm: number;
  onClose(): void;
}

export function ColumnHead({ column, found, reference, pxPerMm, height_mm, onClose }: HeadProps) {
  const bench = useWorkbench();
  const { layout, key, from } = column;
  const isReference = key === reference.key;
  const sum = useSum(layout);
  const lines = useMemo(() => changeLines(whatChanged(reference.layout, layout)), [reference, layout]);
  const { revision } = layout;
  const open = (): void => {
    openLayout(bench, t('Open {name}', { name: layout.name }), layout);
    onClose();
  };
  return (
    <section className="compare-column" aria-label={layout.name} data-testid="compare-column">
      <h3 title={layout.name} dir="auto">
        {layout.name}
        {revision && ` · ${revision.name}, ${t(revision.state)}`}
      </h3>
      <p className="hint">
        {from}, {sum}
      </p>
      <Picture found={found} width_px={pxPerMm * layout.machine.platform.width_mm} height_mm={height_mm} />
      <div className="row">
        <button
          type="button"
          className="button"
          aria-pressed={isReference}
          disabled={isReference}
          onClick={() => setReference(key)}
        >
          {isReference ? t('Reference') : t('Make reference')}
        </button>
        <button type="button" className="button" onClick={open}>
          {t('Open this one')}
        </button>
        <button
          type="button"
          className="button"
          aria-label={t('Take {name} away', { name: layout.name })}
          onClick={() => removeColumn(key)}
        >
          ×
        </button>
      </div>
      {!isReference && (
        <ul className="compare-changes" aria-label={t('What changed')}>
          {lines.length === 0 && <li>{t('nothing changed')}</li>}
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
