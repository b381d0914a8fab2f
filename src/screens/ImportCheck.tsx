/**
 * The check page: what an outline file holds, before any of it lands on the plate. Nothing changes until "Place on the
 * plate"; a file that cannot be read becomes a notice and the page closes.
 */
import { t, type Text } from '../language/index';
import { useCallback, useMemo, useState } from 'react';
import { useWorkbench } from '../canvas/bench';
import { useEdit } from '../panels/useEdit';
import { addedParts, addShapes } from '../commands/operations';
import { placeImport, type ReadingStep } from '../import/outlines';
import type { OutlineImport } from '../import/types';
import type { Choices } from './importCheck/choices';
import { chosenShapes, firstChoices } from './importCheck/choices';
import { CheckSettings } from './importCheck/CheckSettings';
import { ImportPicture } from './importCheck/ImportPicture';
import { ShapeCards } from './importCheck/ShapeCards';
import { useReading, type Reader } from './importCheck/useReading';
import { Sheet } from './Sheet';
import { useSaid } from '../panels/spoken/say';

interface ImportCheckProps {
  readonly file: File;
  /** ", 1 of 3" where several wait for their turn. */
  readonly inRow: string;
  onClose(): void;
}

const STEPS: Readonly<Record<ReadingStep, Text>> = {
  text: 'Reading the text …',
  curves: 'Reading lines and curves …',
  chains: 'Reading which ends meet …',
  outlines: 'Reading the outlines …',
};

function Foot({ imported, chosen, busy, onPlace, onClose }: FootProps) {
  const parts = chosen.reduce((sum, shape) => sum + (shape.copies ?? 1), 0);
  return (
    <div className="dialog-foot">
      <button type="button" className="button" data-testid="import-cancel" onClick={onClose}>
        {t('Cancel')}
      </button>
      {imported.shapes.length > 0 && (
        <button
          type="button"
          className="button"
          data-main
          disabled={parts === 0 || busy}
          data-testid="import-place"
          onClick={() => onPlace(chosen)}
        >
          {t('Place on the plate: {shapes} [shapes: shape|shapes], {parts} [parts: part|parts]', {
            shapes: chosen.length,
            parts,
          })}
        </button>
      )}
    </div>
  );
}
interface FootProps {
  readonly imported: OutlineImport;
  readonly chosen: ReturnType<typeof chosenShapes>;
  readonly busy: boolean;
  onPlace(shapes: ReturnType<typeof chosenShapes>): void;
  onClose(): void;
}

function CheckBody({ imported, choices, busy, onChange, onPlace, onClose }: CheckBodyProps) {
  const { mirrorX, mirrorY, turn_deg } = choices;
  const placed = useMemo(
    () => placeImport(imported, { mirrorX, mirrorY, turn_deg }),
    [imported, mirrorX, mirrorY, turn_deg],
  );
  const chosen = chosenShapes(placed, choices);
  const plain = !mirrorX && !mirrorY && turn_deg === 0;
  return (
    <>
      <div className="check" aria-busy={busy}>
        <div>
          {placed.length === 0 && (
            <p className="check-none" data-testid="import-none">
              {t('No closed outline was found in {name}; nothing can be placed.', { name: imported.name })}
            </p>
          )}
          <ImportPicture imported={imported} placed={placed} plain={plain} />
          <ShapeCards found={imported.shapes} placed={placed} choices={choices} onChange={onChange} />
        </div>
        <CheckSettings imported={imported} choices={choices} onChange={onChange} />
      </div>
      <Foot imported={imported} chosen={chosen} busy={busy} onPlace={onPlace} onClose={onClose} />
    </>
  );
}
interface CheckBodyProps {
  readonly imported: OutlineImport;
  readonly choices: Choices;
  /** Read anew at this moment; what is shown is of the choice before. */
  readonly busy: boolean;
  onChange(choices: Choices): void;
  onPlace: FootProps['onPlace'];
  onClose(): void;
}

function Waiting({ step, onClose }: { readonly step: ReadingStep; onClose(): void }) {
  const words = t(STEPS[step]);
  useSaid(words);
  return (
    <>
      <p className="hint" data-testid="import-reading">
        {words}
      </p>
      <div className="dialog-foot">
        <button type="button" className="button" data-testid="import-cancel" onClick={onClose}>
          {t('Cancel')}
        </button>
      </div>
    </>
  );
}

export default function ImportCheck({ file, inRow, onClose }: ImportCheckProps) {
  const bench = useWorkbench();
  const edit = useEdit();
  const [choices, setChoices] = useState(() => {
    const { view, layout } = bench.store.getState();
    return firstChoices(view.drawHeight_mm, layout.limits.chainGap_mm);
  });
  const onReader = useCallback(
    ({ unit, chainGap_mm }: Reader) => setChoices((now) => ({ ...now, unit, chainGap_mm })),
    [],
  );
  const { imported, step } = useReading({ file, onClose, reader: choices, onReader });
  const place: FootProps['onPlace'] = (shapes) => {
    const before = bench.store.getState().layout;
    edit.press(t('Place outlines of {name}', { name: file.name }), (layout) => addShapes(layout, shapes));
    bench.setView({ selection: addedParts(before, bench.store.getState().layout), tool: 'select' });
    onClose();
  };
  return (
    <Sheet
      title={t('Check {name}{inRow}', { name: file.name, inRow })}
      wide={imported !== null}
      onClose={onClose}
    >
      {imported === null ? (
        <Waiting step={step ?? 'text'} onClose={onClose} />
      ) : (
        <CheckBody
          imported={imported}
          choices={choices}
          busy={step !== null}
          onChange={setChoices}
          onPlace={place}
          onClose={onClose}
        />
      )}
    </Sheet>
  );
}
