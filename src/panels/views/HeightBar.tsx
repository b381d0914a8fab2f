/**
 * The height the plan is cut at: a slider over the slabs, the number, and the list of stretches. Millimetres above the
 * platform.
 */
import { t } from '../../language/index';
import { memo } from 'react';
import { useAnalysisLater, useBench, useWorkbench } from '../../canvas/bench';
import { layerNumber, stretchIndexAt } from '../../canvas/layerAt';
import type { Analysis, Stretch } from '../../build/types';
import { formatField, formatMm } from '../../units/format';
import { parseLength } from '../../units/parse';
import { roundMm } from '../../units/round';
import type { Mm } from '../../units/types';
import { SliderLine } from '../controls/SliderLine';
import { TypedField } from '../controls/TypedField';

const stretchText = (stretch: Stretch): string =>
  t('z {from}–{to} mm, layers {firstLayer}–{lastLayer}', {
    from: formatField(stretch.from_mm),
    to: formatField(stretch.to_mm),
    firstLayer: stretch.firstLayer,
    lastLayer: stretch.lastLayer,
  });

interface FieldProps {
  readonly analysis: Analysis;
  readonly height_mm: Mm;
  set(height_mm: Mm): void;
}

function HeightField({ analysis, height_mm, set }: FieldProps) {
  return (
    <TypedField
      label="z"
      what={t('height')}
      unit="mm"
      parse={parseLength}
      format={formatField}
      min={0}
      max={analysis.build.height_mm}
      clamp
      step={analysis.layout.process.layer_mm}
      value={roundMm(height_mm)}
      testId="height"
      onCommit={set}
    />
  );
}

function HeightSlider({ analysis, height_mm, set }: FieldProps) {
  const { build, layout } = analysis;
  const { layer_mm } = layout.process;
  return (
    <SliderLine
      label={t('Height of the cut')}
      value={height_mm}
      min={0}
      max={Math.max(build.height_mm, layer_mm)}
      step={layer_mm}
      valueText={t('{height}, layer {layer} of {layers}', {
        height: formatMm(height_mm),
        layer: layerNumber(analysis, height_mm),
        layers: build.layers,
      })}
      testId="height-slider"
      onChange={set}
    />
  );
}

/** The options alone, so that they are made anew only when the stretches are. */
const StretchOptions = memo(function StretchOptions({ stretches }: Pick<Analysis, 'stretches'>) {
  return stretches.map((stretch, index) => (
    <option key={stretch.firstLayer} value={index}>
      {stretchText(stretch)}
    </option>
  ));
});

/** Where the list names no stretch. */
const noStretch = ({ stretches, build }: Analysis): string => {
  if (build.layers === 0) return t('nothing to build');
  return stretches.length === 0 ? t('stretches being computed') : t('no stretch');
};

/** A longer list is no help: nearly every layer is another one then. */
const MOST_LISTED = 100;

/** A choice sets the height to the middle of its stretch. */
function StretchChoice({ analysis, height_mm, set }: FieldProps) {
  const { stretches } = analysis;
  if (stretches.length > MOST_LISTED)
    return (
      <span className="stretch-count">{t('{count} different sections', { count: stretches.length })}</span>
    );
  const at = stretchIndexAt(analysis, height_mm);
  return (
    <select
      className="plain-select"
      aria-label={t('Stretch of equal sections')}
      data-testid="stretches"
      value={at}
      onChange={(event) => {
        const stretch = stretches[Number(event.target.value)];
        if (stretch) set(roundMm((stretch.from_mm + stretch.to_mm) / 2));
      }}
    >
      {at < 0 && <option value={-1}>{noStretch(analysis)}</option>}
      <StretchOptions stretches={stretches} />
    </select>
  );
}

export function HeightBar() {
  const bench = useWorkbench();
  const analysis = useAnalysisLater();
  const height_mm = useBench((state) => state.view.height_mm);
  const shared = { analysis, height_mm, set: (value: Mm) => bench.setView({ height_mm: value }) };
  return (
    <>
      <HeightField {...shared} />
      <HeightSlider {...shared} />
      <StretchChoice {...shared} />
    </>
  );
}
