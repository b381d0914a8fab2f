/**
 * The foot of the check page: cut, how far it is, cancel, and place what came out.
 */
import { t, type Text } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { formatField } from '../../units/format';
import type { MeshDoing, MeshFileFound } from '../../worker/meshMessages';
import type { MeshLook } from '../../worker/meshes';
import { choiceFor, cuttablePlaces, type MeshChoices } from './choices';
import { useSaid } from '../../panels/spoken/say';
import { doingText, layersOf } from './meshText';
import type { CutDone, DeskState } from './useMeshDesk';

/** Said once, not at every layer. */
const SAID: Readonly<Record<MeshDoing['doing'], Text>> = {
  reading: 'Reading the mesh',
  checking: 'Checking the mesh',
  cutting: 'Cutting the mesh',
};

/** What is being done and how far it is. */
export function Progress({ doing }: { readonly doing: DeskState['doing'] }) {
  useSaid(doing && t(SAID[doing.doing]));
  if (doing === null) return null;
  return (
    <p className="mesh-progress" data-testid="mesh-progress">
      <progress value={doing.share} max={1} />
      {doingText(doing)}
    </p>
  );
}

interface FootProps {
  readonly file: MeshFileFound;
  readonly look: MeshLook;
  readonly choices: MeshChoices;
  readonly state: DeskState;
  onCut(places: readonly number[]): void;
  onStop(): void;
  onPlace(cut: CutDone): void;
}

function CutButton({ file, look, choices, onCut }: FootProps) {
  const layer_mm = useBench((bench) => bench.layout.process.layer_mm);
  const places = cuttablePlaces(file, choices, look);
  const highest = Math.max(0, ...places.map((place) => look.bodies[place]!.size_mm[2]));
  const count = layersOf(highest, layer_mm);
  return (
    <button
      type="button"
      className="button"
      data-main
      disabled={places.length === 0}
      data-testid="mesh-cut"
      onClick={() => onCut(places)}
    >
      {t('Cut into {count} [layer|layers] of {layer} mm', { count, layer: formatField(layer_mm) })}
    </button>
  );
}

function PlaceButton({ file, choices, cut, onPlace }: FootProps & { readonly cut: CutDone }) {
  const sound = cut.places.filter((_, i) => cut.bodies[i]!.ok);
  const parts = sound.reduce((sum, place) => sum + choiceFor(choices, file, place).copies, 0);
  return (
    <>
      <p className="hint">
        {t(
          'The sections hold for layers of {layer} mm. Where the process gets another thickness, cut the mesh again.',
          { layer: formatField(cut.layer_mm) },
        )}
      </p>
      <button
        type="button"
        className="button"
        data-main
        disabled={sound.length === 0}
        data-testid="mesh-place"
        onClick={() => onPlace(cut)}
      >
        {t('Place on the plate: {shapes} [shapes: shape|shapes], {parts} [parts: part|parts]', {
          shapes: sound.length,
          parts,
        })}
      </button>
    </>
  );
}

export function CutFoot(props: FootProps) {
  const { state, onStop } = props;
  const { cutting, cut, doing } = state;
  return (
    <div className="dialog-foot mesh-foot">
      <Progress doing={doing} />
      {cutting && (
        <button type="button" className="button" data-testid="mesh-cancel" onClick={onStop}>
          {t('Cancel cutting')}
        </button>
      )}
      {!cutting && cut === null && <CutButton {...props} />}
      {cut !== null && <PlaceButton {...props} cut={cut} />}
    </div>
  );
}
