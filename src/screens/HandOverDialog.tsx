/**
 * What can be handed over as a file: tables, the plan at one height, bodies, figures. Files wait until the plate is checked,
 * since each says whether it may be used.
 */
import { t, type Text } from '../language/index';
import { useState } from 'react';
import { useAnalysis, useBench } from '../canvas/bench';
import { isBlocked, isChecked } from '../export/forUse';
import type { Layout } from '../layout/types';
import { zoningWords } from '../panels/division/stepText';
import { useSaid } from '../panels/spoken/say';
import { useChecksum } from '../panels/title/useChecksum';
import { formatField, formatPercent } from '../units/format';
import { CELLS, firstChoices, type Choices } from './handOver/choices';
import { FileRow, inWords, Pick, type Desk } from './handOver/FileRow';
import { useHandOver } from './handOver/useHandOver';
import { Sheet } from './Sheet';
import './handOver/handOver.css';

interface PartProps {
  readonly desk: Desk;
  readonly choices: Choices;
  onChoose(change: Partial<Choices>): void;
}

const CELL_WORDS = {
  point: CELLS.point.words,
  semicolonPoint: CELLS.semicolonPoint.words,
  semicolonComma: CELLS.semicolonComma.words,
};

function Tables({ desk, choices, onChoose }: PartProps) {
  return (
    <section className="file-group">
      <header>
        <h3>{t('Tables')}</h3>
        <Pick
          label={t('numbers as')}
          value={choices.cells}
          options={inWords(CELL_WORDS)}
          testId="file-cells"
          onPick={(cells) => onChoose({ cells })}
        />
      </header>
      <ul>
        <FileRow
          kind="parts"
          desk={desk}
          title={t('Parts')}
          use={t('Each part with its place, its lasers and the heights at which each exposes it.')}
          form="CSV"
        />
        <FileRow
          kind="layers"
          desk={desk}
          title={t('Layers')}
          use={t('Each layer with area and load of every laser, to hold against what slicing reports.')}
          form="CSV"
        />
      </ul>
    </section>
  );
}

const stepOptions = ({ zoning }: Layout, shown_mm: number, top_mm: number): Record<string, string> => ({
  shown: t('z {shown} mm, as shown', { shown: formatField(shown_mm) }),
  ...(zoning.length > 1
    ? Object.fromEntries(
        zoning.flatMap((step, i) =>
          step.from_mm < top_mm || i === 0
            ? [
                [
                  `${i}`,
                  t('from z {from} mm: {zoning}', {
                    from: formatField(step.from_mm),
                    zoning: zoningWords(step.zoning),
                  }),
                ],
              ]
            : [],
        ),
      )
    : {}),
});

const FORMS = { svg: 'SVG', png1: 'PNG, 1200 px', png2: 'PNG, 2400 px', png3: 'PNG, 3600 px' };
const GROUNDS = {
  light: 'light ground',
  dark: 'dark ground',
  print: 'black on white',
} as const satisfies Record<string, Text>;
const ZONE_FORMS = { dxf: 'DXF', svg: 'SVG' };

function PictureOptions({ choices, onChoose }: Omit<PartProps, 'desk'>) {
  return (
    <>
      <Pick
        label={t('as')}
        value={choices.picture}
        options={FORMS}
        testId="file-picture-form"
        onPick={(picture) => onChoose({ picture })}
      />
      <Pick
        label={t('on')}
        value={choices.ground}
        options={inWords(GROUNDS)}
        testId="file-ground"
        onPick={(ground) => onChoose({ ground })}
      />
      <label className="switch">
        <input
          type="checkbox"
          checked={choices.labels}
          data-testid="file-labels"
          onChange={(event) => onChoose({ labels: event.target.checked })}
        />
        {t('part numbers')}
      </label>
    </>
  );
}

function AtHeight({ desk, choices, onChoose }: PartProps) {
  const layout = useBench((state) => state.layout);
  const shown_mm = useBench((state) => state.view.height_mm);
  const { build } = useAnalysis();
  return (
    <section className="file-group">
      <header>
        <h3>{t('At one height')}</h3>
        <Pick
          label={t('cut at')}
          value={String(choices.at)}
          options={stepOptions(layout, shown_mm, build.height_mm)}
          testId="file-height"
          onPick={(at) => onChoose({ at: at === 'shown' ? at : Number(at) })}
        />
      </header>
      <ul>
        <FileRow
          kind="picture"
          desk={desk}
          title={t('Plan')}
          use={t('The plan as a picture, with axes, flow and blade, for documents and mail.')}
          form={choices.picture === 'svg' ? 'SVG' : 'PNG'}
        >
          <PictureOptions choices={choices} onChoose={onChoose} />
        </FileRow>
        <FileRow
          kind="zones"
          desk={desk}
          title={t('Zones and seams')}
          use={t('True-size outlines in mm, origin at the platform’s centre, to lay under other drawings.')}
          form={ZONE_FORMS[choices.zones]}
        >
          <Pick
            label={t('as')}
            value={choices.zones}
            options={ZONE_FORMS}
            testId="file-zones-form"
            onPick={(zones) => onChoose({ zones })}
          />
        </FileRow>
        <FileRow
          kind="report"
          desk={desk}
          title={t('Report')}
          use={t('All figures of this layer and of the whole build, for other programs.')}
          form="JSON"
        />
      </ul>
    </section>
  );
}

function Bodies({ desk }: { readonly desk: Desk }) {
  return (
    <section className="file-group">
      <header>
        <h3>{t('Bodies')}</h3>
      </header>
      <ul>
        <FileRow
          kind="mesh"
          desk={desk}
          title={t('Arranged plate')}
          use={t('Each part where it stands, made of its sections: to check places, not to build from.')}
          form="3MF"
        />
      </ul>
    </section>
  );
}

/** Whether files may be used, or what they wait for. */
function Standing({ ready, blocked }: { readonly ready: boolean; readonly blocked: boolean }) {
  const progress = useBench((state) => state.height.progress);
  useSaid(ready ? null : t('The plate is being checked; files wait for it.'));
  if (!ready)
    return (
      <p className="file-line" data-testid="files-wait">
        {progress === null
          ? t('The plate is being checked; files wait for it.')
          : t('The plate is being checked, {percent}; files wait for it.', {
              percent: formatPercent(100 * progress),
            })}
      </p>
    );
  if (!blocked) return null;
  return (
    <p className="field-fault" data-testid="files-blocked">
      {t(
        'NOT FOR USE: something blocks hand-over, see the problems. Every file says so, in its name and inside.',
      )}
    </p>
  );
}

/** Stands there until something was made. */
const WHERE_TO: Text = 'Files go to the browser’s downloads.';

const kept: { choices: Choices | null } = { choices: null };

/** The choices, kept from opening to opening; a step that is there no more gives way to the height shown. */
function useChoices() {
  const steps = useBench((state) => state.layout.zoning.length);
  const [choices, setChoices] = useState(() => kept.choices ?? firstChoices());
  const known = choices.at === 'shown' || (choices.at < steps && steps > 1);
  const choose = (change: Partial<Choices>): void =>
    setChoices((now) => (kept.choices = { ...now, ...change }));
  return { choices: known ? choices : { ...choices, at: 'shown' as const }, choose };
}

export default function HandOverDialog({ onClose }: { onClose(): void }) {
  const analysis = useAnalysis();
  const checksum = useChecksum(analysis.layout);
  const { choices, choose } = useChoices();
  const { job, done, run, cancel } = useHandOver(choices, checksum);
  useSaid(done);
  const ready = isChecked(analysis) && /^[0-9a-f]+$/.test(checksum);
  const desk: Desk = { job, ready, run, cancel };
  return (
    <Sheet title={t('Hand over files')} wide onClose={onClose}>
      <p className="hint">
        {t(
          'Names carry the layout, its revision and its checksum. Hours and loads are estimates. Nothing leaves this computer but by your own hand.',
        )}
      </p>
      <Standing ready={ready} blocked={isBlocked(analysis)} />
      <Tables desk={desk} choices={choices} onChoose={choose} />
      <AtHeight desk={desk} choices={choices} onChoose={choose} />
      <Bodies desk={desk} />
      <footer className="dialog-foot file-foot">
        <p className="file-line" data-testid="file-done">
          {done ?? t(WHERE_TO)}
        </p>
      </footer>
    </Sheet>
  );
}
