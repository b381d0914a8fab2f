/** Which of several divisions over height the plan shows. */
import { useBench } from '../../canvas/bench';
import { shownStep } from '../../store/shown';
import { stepShown } from './stepText';
import './steps.css';

export function StepShown() {
  const zoning = useBench((state) => state.layout.zoning);
  const index = useBench((state) => shownStep(state.layout, state.view.height_mm));
  const words = stepShown({ zoning }, index);
  return words === null ? null : (
    <span className="step-shown" data-testid="step-shown" title={words}>
      {words}
    </span>
  );
}
