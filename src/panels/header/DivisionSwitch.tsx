/**
 * The division of the plate: one picture and one key each, from the one list of commands.
 */
import { t } from '../../language/index';
import { useBench } from '../../canvas/bench';
import { command } from '../../commands/index';
import type { Zoning } from '../../layout/types';
import { plateShown } from '../../store/shown';
import { Segmented } from '../controls/Segmented';
import { DivisionIcon, DIVISIONS } from '../division/icons';
import type { DivisionChoice } from '../division/icons';
import { keyText, useCommand } from '../useCommands';

const COMMAND_OF: Readonly<Record<DivisionChoice, string>> = {
  quadrants: 'divide-quadrants',
  'strips-x': 'divide-strips-x',
  'strips-y': 'divide-strips-y',
  wholeField: 'divide-whole-field',
  drawn: 'divide-drawn',
};

/** The picture that stands for a zoning; "" for strips that run at an angle of their own. */
export function choiceOf(zoning: Zoning): DivisionChoice | '' {
  if (zoning.strategy !== 'strips') return zoning.strategy;
  if (zoning.run_deg === 90) return 'strips-x';
  return zoning.run_deg === 0 ? 'strips-y' : '';
}

const option = ({ choice, label }: (typeof DIVISIONS)[number]) => {
  const key = keyText(command(COMMAND_OF[choice]).keys[0] ?? '');
  return {
    value: choice,
    label: t(label),
    title: `${t(label)} (${key})`,
    content: (
      <>
        <DivisionIcon choice={choice} />
        <span className="key">{key}</span>
      </>
    ),
  };
};

export function DivisionSwitch() {
  const choice = useBench((state) => choiceOf(plateShown(state).zoning));
  const commands = {
    quadrants: useCommand(COMMAND_OF.quadrants),
    'strips-x': useCommand(COMMAND_OF['strips-x']),
    'strips-y': useCommand(COMMAND_OF['strips-y']),
    wholeField: useCommand(COMMAND_OF.wholeField),
    drawn: useCommand(COMMAND_OF.drawn),
  };
  return (
    <Segmented
      label={t('Division')}
      value={choice}
      options={DIVISIONS.map(option)}
      onChoose={(next) => next !== '' && commands[next].run()}
    />
  );
}
