/**
 * The height the plan is cut at: a slider over the slabs, the number, and the list of stretches. Millimetres above the
 * platform.
 */
import { useAnalysis, useBench, useWorkbench } from '../../canvas/bench';
import { layerNumber, stretchIndexAt } from '../../canvas/layerAt';
import type { Stretch } from '../../build/types';
import { formatField, formatMm } from '../../units/format';
import { parseLength } from '../../units/parse';
import { roundMm } from '../../units/round';
import { SliderLine } from '../controls/SliderLine';
import { TypedField } from '../controls/TypedField';

const stretchText = (stretch: Stretch): string =>
  `z ${formatField(stretch.from_mm)}–${formatField(stretch.to_mm)} mm, layers ${stretch.firstLayer}–${stretch.lastLayer}`;

export function HeightBar() {
  const bench = useWorkbench();
  const analysis = useAnalysis();
  const height_mm = useBench((state) => state.view.height_mm);
  const { stretches, build } = analysis;
  const set = (value: number): void => bench.setView({ height_mm: value });
  const at = stretchIndexAt(analysis, height_mm);
  return (
    <>
      <TypedField
        label="z"
        what="height"
        unit="mm"
        parse={parseLength}
        format={formatField}
        min={0}
        max={build.height_mm}
        step={analysis.layout.process.layer_mm}
        value={roundMm(height_mm)}
        testId="height"
        onCommit={set}
      />
      <SliderLine
        label="Height of the cut"
        value={height_mm}
        min={0}
        max={Math.max(build.height_mm, analysis.layout.process.layer_mm)}
        step={analysis.layout.process.layer_mm}
        valueText={`${formatMm(height_mm)}, layer ${layerNumber(analysis, height_mm)} of ${build.layers}`}
        testId="height-slider"
        onChange={set}
      />
      <select
        className="plain-select"
        aria-label="Stretch of equal sections"
        data-testid="stretches"
        value={at}
        onChange={(event) => {
          const stretch = stretches[Number(event.target.value)];
          if (stretch) set(roundMm((stretch.from_mm + stretch.to_mm) / 2));
        }}
      >
        {stretches.length === 0 && <option value={-1}>nothing to build</option>}
        {stretches.map((stretch, index) => (
          <option key={stretch.firstLayer} value={index}>
            {stretchText(stretch)}
          </option>
        ))}
      </select>
    </>
  );
}
