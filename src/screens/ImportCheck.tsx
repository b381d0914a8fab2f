/**
 * The check page: what an outline file holds, before any of it lands on the plate. Nothing changes until "Place on the
 * plate"; a file that cannot be read becomes a notice and the page closes.
 */
import { useEffect, useMemo, useState } from 'react';
import { useWorkbench } from '../canvas/bench';
import { useEdit } from '../panels/useEdit';
import { addedParts, addShapes } from '../commands/operations';
import { placeImport, readOutlines } from '../import/outlines';
import type { OutlineImport } from '../import/types';
import type { Result } from '../layout/result';
import type { Choices } from './importCheck/choices';
import { chosenShapes, firstChoices } from './importCheck/choices';
import { CheckSettings } from './importCheck/CheckSettings';
import { ImportPicture } from './importCheck/ImportPicture';
import { ShapeCards } from './importCheck/ShapeCards';
import { Sheet } from './Sheet';

interface ImportCheckProps {
  readonly file: File;
  onClose(): void;
}

/** The file's text; null while it is being read or where it cannot be. */
function useText({ file, onClose }: ImportCheckProps): string | null {
  const bench = useWorkbench();
  const [text, setText] = useState<string | null>(null);
  useEffect(() => {
    let current = true;
    file.text().then(
      (read) => current && setText(read),
      () => {
        bench.notify({ code: 'file-unreadable', params: { name: file.name } });
        onClose();
      },
    );
    return () => {
      current = false;
    };
  }, [bench, file, onClose]);
  return text;
}

function CheckBody({ imported, choices, onChange, onPlace }: CheckBodyProps) {
  const { mirrorX, mirrorY, turn_deg } = choices;
  const placed = useMemo(
    () => placeImport(imported, { mirrorX, mirrorY, turn_deg }),
    [imported, mirrorX, mirrorY, turn_deg],
  );
  const chosen = chosenShapes(placed, choices);
  const parts = chosen.reduce((sum, shape) => sum + (shape.copies ?? 1), 0);
  const plain = !mirrorX && !mirrorY && turn_deg === 0;
  return (
    <>
      <div className="check">
        <div>
          {placed.length === 0 && <p>No closed outline was found in {imported.name}.</p>}
          <ImportPicture imported={imported} placed={placed} plain={plain} />
          <ShapeCards found={imported.shapes} placed={placed} choices={choices} onChange={onChange} />
        </div>
        <CheckSettings imported={imported} choices={choices} onChange={onChange} />
      </div>
      <div className="dialog-foot">
        <button
          type="button"
          className="button"
          data-main
          disabled={chosen.length === 0}
          data-testid="import-place"
          onClick={() => onPlace(chosen)}
        >
          Place on the plate: {chosen.length} {chosen.length === 1 ? 'shape' : 'shapes'}, {parts}{' '}
          {parts === 1 ? 'part' : 'parts'}
        </button>
      </div>
    </>
  );
}
interface CheckBodyProps {
  readonly imported: OutlineImport;
  readonly choices: Choices;
  onChange(choices: Choices): void;
  onPlace(shapes: ReturnType<typeof chosenShapes>): void;
}

/** Reads the text with the unit chosen; a refusal is told once and closes the page. */
function useImport(props: ImportCheckProps, choices: Choices): OutlineImport | null {
  const bench = useWorkbench();
  const text = useText(props);
  const { file, onClose } = props;
  const read = useMemo((): Result<OutlineImport> | null => {
    if (text === null) return null;
    const { chainGap_mm } = bench.store.getState().layout.limits;
    return readOutlines(file.name, text, {
      chainGap_mm,
      ...(choices.unit === null ? {} : { unit: choices.unit }),
    });
  }, [bench, file, text, choices.unit]);
  useEffect(() => {
    if (read === null || read.ok) return;
    bench.notify({ ...read.fault, params: { ...read.fault.params, file: file.name } });
    onClose();
  }, [bench, file, read, onClose]);
  return read?.ok === true ? read.value : null;
}

export default function ImportCheck(props: ImportCheckProps) {
  const bench = useWorkbench();
  const edit = useEdit();
  const [choices, setChoices] = useState(() => firstChoices(bench.store.getState().view.drawHeight_mm));
  const imported = useImport(props, choices);
  const place: CheckBodyProps['onPlace'] = (shapes) => {
    const before = bench.store.getState().layout;
    edit.press(`Place outlines of ${props.file.name}`, (layout) => addShapes(layout, shapes));
    bench.setView({ selection: addedParts(before, bench.store.getState().layout), tool: 'select' });
    props.onClose();
  };
  return (
    <Sheet title={`Check ${props.file.name}`} wide onClose={props.onClose}>
      {imported === null ? (
        <p className="hint">Reading …</p>
      ) : (
        <CheckBody imported={imported} choices={choices} onChange={setChoices} onPlace={place} />
      )}
    </Sheet>
  );
}
