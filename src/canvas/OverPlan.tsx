/**
 * What stands over the painted plan and is not needed to see and move the plate, in one piece that is loaded after it:
 * handles, words beside the pointer, the tool's hint, the pointer's marks on the rulers, the plan's keys. Screen px.
 */
import type { Analysis, LayerFigures } from '../build/types';
import './overPlan.css';
import { PlanHandles, type HandlesProps } from './PlanHandles';
import { PlanMeasure } from './PlanMeasure';
import { PlanMarks } from './PlanMarks';
import { PlanKeys, type PlanKeysProps } from './planKeys';
import { PlanHint, PlanTip, PointerMarks } from './PlanTip';

interface OverPlanProps extends HandlesProps, PlanKeysProps {
  readonly analysis: Analysis;
  readonly layer: LayerFigures | null;
}

export function OverPlan({ element, host, controller, size, onPress, analysis, layer }: OverPlanProps) {
  return (
    <>
      <PlanKeys element={element} host={host} controller={controller} />
      <PlanHint />
      <PlanHandles host={host} size={size} onPress={onPress} />
      <PlanMarks host={host} size={size} />
      <PlanMeasure host={host} size={size} />
      <PointerMarks host={host} size={size} />
      <PlanTip host={host} size={size} analysis={analysis} layer={layer} />
    </>
  );
}
