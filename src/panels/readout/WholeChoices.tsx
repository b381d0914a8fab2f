/**
 * Under "whole parts": how many parts have a choice of laser at all; in the warning colour where none has.
 */
import { t } from '../../language/index';
import { wholePartChoices } from '../../build/choices';
import { useAnalysisLater } from '../../canvas/bench';
import { Figure } from './Figure';

export function WholeChoices() {
  const { layout, divisions, parts } = useAnalysisLater();
  if (layout.allocation !== 'wholeParts' || parts.length === 0) return null;
  const { several } = wholePartChoices(layout, divisions, parts);
  return (
    <div className="whole-choices">
      <Figure
        name="whole-choices"
        label={t('Whole parts with a choice of laser')}
        value={t('{part} of {whole}', { part: several, whole: parts.length })}
        warn={several === 0}
        missing={several === 0 ? t('this rule decides nothing here') : undefined}
      />
    </div>
  );
}
