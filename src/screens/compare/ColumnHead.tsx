/** The head of one column: what it is, its plan at the common height and zoom, what changed, and what can be done with it. */
import { useMemo } from 'react';
import { whatChanged } from '../../build/whatChanged';
import { useWorkbench } from '../../canvas/bench';
import { PlanPicture } from '../../canvas/PlanPicture';
import { openLayout } from '../../commands/file/openLayout';
import { checksum } from '../../layout/checksum';
import { changeLines } from './changeWords';
import { removeColumn, setReference, type Column } from './columns';
import type { Found } from './useAnalysed';

interface PictureProps {
  readonly found: Found;
  readonly name: string;
  readonly width_px: number;
  readonly height_mm: number;
}

/** The plan; words in its place while it is being computed. */
export function Picture({ found, ...picture }: PictureProps) {
  if (found === 'failed') return <p className="field-fault">The figures could not be computed.</p>;
  if (found === null) return <p className="hint">Being computed …</p>;
  return <PlanPicture analysis={found} {...picture} />;
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
  const sum = useMemo(() => checksum(layout), [layout]);
  const lines = useMemo(() => changeLines(whatChanged(reference.layout, layout)), [reference, layout]);
  const { revision } = layout;
  const open = (): void => {
    openLayout(bench, `Open ${layout.name}`, layout);
    onClose();
  };
  return (
    <section className="compare-column" aria-label={layout.name} data-testid="compare-column">
      <h3>
        {layout.name}
        {revision && ` · ${revision.name}, ${revision.state}`}
      </h3>
      <p className="hint">
        {from}, {sum}
      </p>
      <Picture
        found={found}
        name={`Plan of ${layout.name}`}
        width_px={pxPerMm * layout.machine.platform.width_mm}
        height_mm={height_mm}
      />
      <div className="row">
        <button
          type="button"
          className="button"
          aria-pressed={isReference}
          disabled={isReference}
          onClick={() => setReference(key)}
        >
          {isReference ? 'Reference' : 'Make reference'}
        </button>
        <button type="button" className="button" onClick={open}>
          Open this one
        </button>
        <button
          type="button"
          className="button"
          aria-label={`Take ${layout.name} away`}
          onClick={() => removeColumn(key)}
        >
          ×
        </button>
      </div>
      {!isReference && (
        <ul className="compare-changes" aria-label="What changed">
          {lines.length === 0 && <li>nothing changed</li>}
          {lines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      )}
    </section>
  );
}
