/**
 * The blade: what it meets in the layer shown, where over the build it meets most, rises most steeply and runs along most
 * sides, and what turning the part would change. Heights are links that set the height; parts light up.
 */
import { rich } from '../../canvas/rich';
import { t } from '../../language/index';
import { useMemo } from 'react';
import { settingsOf } from '../../build/blade';
import { bladeAt, type BladeAt, type BladeStudy } from '../../build/bladeStudy';
import type { Heights } from '../../build/bladeBuild';
import { useWorkbench } from '../../canvas/bench';
import { turnTogether } from '../../commands/operations';
import { messageAdvice, messageText } from '../../layout/messages';
import type { Layout, PartId } from '../../layout/types';
import type { Problem } from '../../build/types';
import { roundMm } from '../../units/round';
import { useEdit } from '../useEdit';
import { useLayerLater } from '../useLayer';
import { useLightHandlers } from '../useLight';
import { BladeChart } from './BladeChart';
import { adviceText, degreesText, heightsText, metText, partsText, riseText, sidesText } from './bladeText';
import { useBladeStudy } from './useBladeStudy';
import './blade.css';

/** Sets the height to the middle of a range; lights up and selects the part that is meant. */
function HeightLink({ heights, part }: { readonly heights: Heights; readonly part?: PartId }) {
  const bench = useWorkbench();
  const light = useLightHandlers(part === undefined ? 'none' : `part:${part}`);
  const show = (): void => {
    const height_mm = roundMm((heights.from_mm + heights.to_mm) / 2);
    bench.setView(part === undefined ? { height_mm } : { height_mm, selection: [part] });
  };
  return (
    <button type="button" className="blade-link" onClick={show} {...light}>
      {heightsText(heights)}
    </button>
  );
}

function PartLink({ part }: { readonly part: PartId }) {
  const bench = useWorkbench();
  const light = useLightHandlers(`part:${part}`);
  return (
    <button
      type="button"
      className="blade-link"
      onClick={() => bench.setView({ selection: [part] })}
      {...light}
    >
      {part}
    </button>
  );
}

function LayerLines({ layout, at }: { readonly layout: Layout; readonly at: BladeAt }) {
  const { contact, steepest } = at;
  const part = layout.parts[steepest.part]?.id;
  return (
    <ul className="blade-lines" data-testid="blade-layer">
      <li>
        {t('meets {met} at most, at {at}', {
          met: metText(contact.largest.met_mm),
          at: metText(contact.largest.at_mm),
        })}
      </li>
      <li>
        {t('rises by {rise}', { rise: riseText(contact.steepest) })}
        {part !== undefined && (
          <>
            {' '}
            (<PartLink part={part} /> {metText(steepest.part_mm)})
          </>
        )}
      </li>
      <li>{sidesText(contact.sides.length, contact.sides_mm, settingsOf(layout.machine.recoater))}</li>
    </ul>
  );
}

function BuildLines({ layout, study }: { readonly layout: Layout; readonly study: BladeStudy }) {
  const { largest, steepest, sides } = study.build;
  const part = layout.parts[steepest.value.part]?.id;
  return (
    <ul className="blade-lines" data-testid="blade-build">
      <li>
        {rich('meets most, {met}, from {height}', {
          met: metText(largest.value.met_mm),
          height: <HeightLink heights={largest.heights} />,
        })}
      </li>
      {part !== undefined && (
        <li>
          {rich('rises most, by {rise}, from {height}; {part} adds {own}', {
            rise: riseText(steepest.value.rise),
            height: <HeightLink heights={steepest.heights} part={part} />,
            part,
            own: metText(steepest.value.part_mm),
          })}
        </li>
      )}
      {sides.value.count > 0 && (
        <li>
          {rich('runs on to most sides from {height}: {sides}, {length} in all ({parts})', {
            height: <HeightLink heights={sides.heights} part={sides.value.parts[0]} />,
            sides: sides.value.count,
            length: metText(sides.value.length_mm),
            parts: partsText(sides.value.parts),
          })}
        </li>
      )}
    </ul>
  );
}

function Advice({ layout, study }: { readonly layout: Layout; readonly study: BladeStudy }) {
  const edit = useEdit();
  const part = layout.parts[study.build.steepest.value.part]?.id;
  if (part === undefined || study.advice === null) return null;
  const { turn_deg } = study.advice;
  return (
    <div className="blade-advice" data-testid="blade-advice">
      <p>{adviceText(part, study.advice)}</p>
      <button
        type="button"
        className="button"
        onClick={() => edit.press(t('Turn against the blade'), (now) => turnTogether(now, [part], turn_deg))}
      >
        {t('Turn {part} by {angle}', { part, angle: degreesText(turn_deg) })}
      </button>
    </div>
  );
}

function SideEntry({ problem }: { readonly problem: Problem }) {
  const bench = useWorkbench();
  const light = useLightHandlers(`part:${problem.parts[0] ?? ''}`);
  return (
    <li>
      <button
        type="button"
        className="blade-side"
        onClick={() => bench.setView({ selection: problem.parts })}
        {...light}
      >
        {messageText(problem.code, problem.params)} {messageAdvice(problem.code, problem.params)}
      </button>
    </li>
  );
}

const newsText = (study: BladeStudy | null, progress: number): string =>
  t(study ? 'before the last change; being computed: {percent} %' : 'being computed: {percent} %', {
    percent: Math.floor(100 * progress),
  });

function WholeBuild({ layout }: { readonly layout: Layout }) {
  const { study, progress } = useBladeStudy(layout);
  return (
    <section aria-label={t('The blade over the whole build')} data-stale={progress !== null || undefined}>
      <h3 className="blade-head">
        {t('OVER THE BUILD')}{' '}
        <span data-testid="blade-news">{progress !== null && newsText(study, progress)}</span>
      </h3>
      {study && (
        <>
          <BuildLines layout={layout} study={study} />
          {progress === null && <Advice layout={layout} study={study} />}
          <ul className="blade-sides" data-testid="blade-sides">
            {study.sides.map((problem) => (
              <SideEntry key={problem.parts[0]} problem={problem} />
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

export function BladePanel() {
  const { analysis, layer } = useLayerLater();
  const { layout } = analysis;
  const at = useMemo(() => bladeAt(layout, layer), [layout, layer]);
  if (at === null) return <p className="hint">{t('The blade meets nothing: the plate is empty.')}</p>;
  return (
    <section className="blade" aria-label={t('Blade')} data-testid="blade">
      <h3 className="blade-head">
        {t('BLADE, LAYER {layer}', { layer })} <span>{t('geometry only')}</span>
      </h3>
      <BladeChart contact={at.contact} machine={layout.machine} />
      <LayerLines layout={layout} at={at} />
      <WholeBuild layout={layout} />
      <p className="hint">
        {t(
          'A straight blade and sections as drawn; stroke, angle and lengths are common practice without a source. The machine maker’s instructions decide.',
        )}
      </p>
    </section>
  );
}
