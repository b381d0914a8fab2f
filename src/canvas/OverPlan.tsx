/**
 * What stands over the painted plan and is not needed to see and move the plate, in one piece that is loaded after it:
 * handles, words beside the pointer, the tool's hint, the pointer's marks on the rulers. Screen px.
 */
import type { Analysis, LayerFigures } from '../build/types';
import { PlanHandles, type HandlesProps } from './PlanHandles';
import { PlanHint, PlanTip, PointerMarks } from './PlanTip';

interface OverPlanProps extends HandlesProps {
  readonly analysis: Analysis;
  readonly layer: LayerFigures | null;
}

export function OverPlan({ host, size, onPress, analysis, layer }: OverPlanProps) {
  return (
    <>
      <PlanHint />
      <PlanHandles host={host} size={size} onPress={onPress} />
      <PointerMarks host={host} size={size} />
      <PlanTip host={host} size={size} analysis={analysis} layer={layer} />
    </>
  );
}
