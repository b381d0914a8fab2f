/**
 * Drags of the arrows of gas flow and blade. Degrees counter-clockwise from +x, towards which they move.
 */
import { t } from '../../language/index';
import { setGasFlow, setRecoater } from '../../commands/operations/streams';
import type { Layout } from '../../layout/types';
import type { Degrees } from '../../units/types';
import { TURN_STEP_DEG, directionOf, type Modifiers } from '../snapping';
import { editGesture, type Gesture, type Input, type PlanHost } from './gesture';

export type Stream = 'gas' | 'blade';
const FREE_GAS_DEG: Degrees = 1;
const SIDE_DEG: Degrees = 90;

/** Flow and blade as the layout has them. */
export const streamDirection = (layout: Layout, stream: Stream): Degrees =>
  stream === 'gas' ? layout.machine.gasFlow.towards_deg : layout.machine.recoater.towards_deg;

export const setStream = (layout: Layout, stream: Stream, towards: Degrees): Layout =>
  stream === 'gas' ? setGasFlow(layout, towards) : setRecoater(layout, towards);

/** Gas: whole degrees, 15° steps with Shift. Blade: the four sides, 15° steps with Shift. */
export const streamStep = (stream: Stream, held: Modifiers): Degrees =>
  held.shift ? TURN_STEP_DEG : stream === 'gas' ? FREE_GAS_DEG : SIDE_DEG;

/** Takes an arrow around the platform; it blows from where it stands towards the centre. */
export const streamGesture = (host: PlanHost, start: Input, stream: Stream): Gesture => {
  const target = (to: Input): Degrees => {
    const step = streamStep(stream, to.held);
    return (Math.round((directionOf({ x: 0, y: 0 }, to.at) + 180) / step) * step) % 360;
  };
  return editGesture(host, start, {
    label: stream === 'gas' ? t('Turn the gas flow') : t('Turn the blade'),
    change: (layout, to) => setStream(layout, stream, target(to)),
    words: (to) => [
      t(stream === 'gas' ? 'gas flows towards {towards}°' : 'blade moves towards {towards}°', {
        towards: target(to),
      }),
    ],
  });
};
