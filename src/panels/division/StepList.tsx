/**
 * Zones over height: a line for every step with its range and division, the one shown marked; its lower end as a number; a
 * new step from the height shown on. Choosing a line moves the height into its middle. Millimetres above the platform.
 */
import { t } from '../../language/index';
import { useBench, useWorkbench } from '../../canvas/bench';
import {
  bottomOfLayer,
  middleOfStep,
  moveStep,
  removeStep,
  stepHeight,
  stepLimits,
} from '../../commands/operations';
import { shownStep } from '../../store/shown';
import { formatField } from '../../units/format';
import { Block } from '../controls/Block';
import { LengthField } from '../controls/fields';
import { CommandButton } from '../header/CommandButton';
import { useEdit } from '../useEdit';
import { stepRange, zoningWords } from './stepText';
import { StepSuggestion } from './StepSuggestion';
import './steps.css';

function StepName({ index, shown }: StepProps) {
  const bench = useWorkbench();
  const layout = useBench((state) => state.layout);
  const middle = middleOfStep(layout, index);
  return (
    <button
      type="button"
      className="step-line-name"
      aria-current={shown || undefined}
      disabled={middle === null}
      title={
        middle === null
          ? t('It holds in no layer')
          : t('Look at {middle} mm', { middle: formatField(middle) })
      }
      data-testid={`step-${index}`}
      onClick={() => middle !== null && bench.setView({ height_mm: middle })}
    >
      <span className="step-range">{stepRange(layout, index)}</span>
      <span>{zoningWords(layout.zoning[index]!.zoning)}</span>
    </button>
  );
}
interface StepProps {
  readonly index: number;
  readonly shown: boolean;
}

/** The first step begins at the platform and stays. */
function StepLine({ index, shown }: StepProps) {
  const edit = useEdit();
  const layout = useBench((state) => state.layout);
  const limits = stepLimits(layout, index);
  const name = t('zones {number}', { number: index + 1 });
  return (
    <li className="step" data-shown={shown || undefined}>
      <StepName index={index} shown={shown} />
      {index > 0 && (
        <>
          <LengthField
            label={t('{name} from', { name })}
            value={layout.zoning[index]!.from_mm}
            min={limits?.min}
            max={limits?.max}
            disabled={limits === null}
            step={layout.process.layer_mm}
            testId={`step-from-${index}`}
            hint={t('Above the platform; a change begins with a layer')}
            recipe={(plate, from_mm) => moveStep(plate, index, from_mm)}
          />
          <button
            type="button"
            className="button"
            data-bare
            title={t('Remove {name}: those below hold there, too', { name })}
            aria-label={t('Remove {name}', { name })}
            data-testid={`step-remove-${index}`}
            onClick={() => edit.press(t('Remove this change of zones'), (plate) => removeStep(plate, index))}
          >
            ×
          </button>
        </>
      )}
    </li>
  );
}

/** The button tells the height at which the change would begin. */
function ChangeFromHere() {
  const from_mm = useBench(({ layout, view }) => stepHeight(layout, bottomOfLayer(layout, view.height_mm)));
  const words = from_mm === null ? t('from here') : t('from {from} mm', { from: formatField(from_mm) });
  return (
    <CommandButton id="change-from-here" label={t('Change {words} on: other zones', { words })}>
      {t('Change {words} on', { words })}
    </CommandButton>
  );
}

export function StepList() {
  const zoning = useBench((state) => state.layout.zoning);
  const shown = useBench((state) => shownStep(state.layout, state.view.height_mm));
  return (
    <Block title={t('ZONES OVER HEIGHT')} testId="zones-over-height">
      {zoning.length === 1 ? (
        <p className="hint">
          {t('The zones are the same at every height; go to a height to change them from there on.')}
        </p>
      ) : (
        <ol className="steps">
          {zoning.map((_, index) => (
            <StepLine key={`${index} of ${zoning.length}`} index={index} shown={index === shown} />
          ))}
        </ol>
      )}
      <ChangeFromHere />
      <StepSuggestion />
    </Block>
  );
}
