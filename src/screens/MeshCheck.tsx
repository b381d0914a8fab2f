/**
 * The check page for meshes: what the file holds, how it shall stand, what cutting it gives, before any of it lands on the
 * plate. Nothing changes until "Place on the plate"; a file that cannot be read becomes a notice and the page closes.
 */
import { t } from '../language/index';
import { useCallback, useEffect, useMemo, useState } from 'react';
import { useWorkbench } from '../canvas/bench';
import { addedParts, addShapes } from '../commands/operations';
import type { Fault } from '../layout/result';
import { useEdit } from '../panels/useEdit';
import type { MeshFileFound } from '../worker/meshMessages';
import { arrangementOf, placesFor } from './meshCheck/arrangement';
import { BodyList } from './meshCheck/BodyList';
import { CutFoot, Progress } from './meshCheck/CutFoot';
import { firstChoices, newShapes, settingsFor, type MeshChoices } from './meshCheck/choices';
import { MeshPictures } from './meshCheck/MeshPictures';
import { MeshSettingsPanel } from './meshCheck/MeshSettings';
import { useMeshDesk, type CutDone } from './meshCheck/useMeshDesk';
import { clearRefused } from './clearRefused';
import { Sheet } from './Sheet';
import './meshCheck/meshCheck.css';

interface MeshCheckProps {
  readonly file: File;
  /** ", 1 of 3" where several wait for their turn. */
  readonly inRow: string;
  onClose(): void;
}
type Desk = ReturnType<typeof useMeshDesk>;

/** Asks for a new look where how the bodies stand, or the one shown, has changed. */
function useLook({ look }: Desk, file: MeshFileFound | null, choices: MeshChoices): void {
  const { unit, turns, joinCracks, chainGap_mm, shown } = choices;
  useEffect(() => {
    if (file) look(settingsFor(file, { unit, turns, joinCracks, chainGap_mm }), shown);
  }, [look, file, unit, turns, joinCracks, chainGap_mm, shown]);
}

interface BodyProps {
  readonly desk: Desk;
  readonly choices: MeshChoices;
  onChange(choices: MeshChoices): void;
  onClose(): void;
  onPlace(file: MeshFileFound, cut: CutDone): void;
}

/** While the file is read and first looked at. */
function Waiting({ desk, onClose }: Pick<BodyProps, 'desk' | 'onClose'>) {
  return (
    <div className="dialog-foot mesh-foot">
      <Progress doing={desk.state.doing} />
      <button type="button" className="button" data-testid="mesh-cancel" onClick={onClose}>
        {t('Cancel')}
      </button>
    </div>
  );
}

function CheckBody({ desk, choices, onChange, onClose, onPlace }: BodyProps) {
  const bench = useWorkbench();
  const { file, look, cut } = desk.state;
  if (file === null || look === null) return <Waiting desk={desk} onClose={onClose} />;
  const onCut = (places: readonly number[]): void => {
    const { layer_mm } = bench.store.getState().layout.process;
    desk.cut(settingsFor(file, choices), places, layer_mm);
  };
  return (
    <>
      <div className="check">
        <div>
          <MeshPictures views={look.views} size={look.bodies[look.shown]!.size_mm} />
          <BodyList file={file} look={look} choices={choices} cut={cut} onChange={onChange} />
        </div>
        <MeshSettingsPanel file={file} look={look} choices={choices} onChange={onChange} />
      </div>
      <CutFoot
        file={file}
        look={look}
        choices={choices}
        state={desk.state}
        onCut={onCut}
        onStop={desk.stop}
        onPlace={(done) => onPlace(file, done)}
      />
    </>
  );
}

export default function MeshCheck({ file, inRow, onClose }: MeshCheckProps) {
  const bench = useWorkbench();
  const edit = useEdit();
  const [choices, setChoices] = useState(() => {
    const { limits, parts } = bench.store.getState().layout;
    return firstChoices(limits.chainGap_mm, parts.length === 0);
  });
  const onRefused = useCallback(
    (fault: Fault): void => {
      bench.notify({ ...fault, params: { ...fault.params, file: file.name } });
      onClose();
    },
    [bench, file, onClose],
  );
  const desk = useMeshDesk(useMemo(() => ({ file, onRefused }), [file, onRefused]));
  const opened = desk.state.file !== null;
  useEffect(() => {
    if (opened) clearRefused(bench);
  }, [bench, opened]);
  useLook(desk, desk.state.file, choices);
  const place = (found: MeshFileFound, cut: CutDone): void => {
    const before = bench.store.getState().layout;
    const { look } = desk.state;
    const kept = choices.keepPlaces && look ? arrangementOf(found, look, choices, before.machine) : null;
    const shapes = newShapes(found, choices, cut.places, cut.bodies, (body) =>
      placesFor(found, choices, body, kept),
    );
    const fault = edit.change(t('Place {name}', { name: file.name }), (layout) => addShapes(layout, shapes));
    // what was cut stays where the plate has no room for it
    if (fault !== null) return bench.notify(fault);
    bench.setView({ selection: addedParts(before, bench.store.getState().layout), tool: 'select' });
    onClose();
  };
  return (
    <Sheet title={t('Check {name}{inRow}', { name: file.name, inRow })} wide onClose={onClose}>
      <CheckBody desk={desk} choices={choices} onChange={setChoices} onClose={onClose} onPlace={place} />
    </Sheet>
  );
}
