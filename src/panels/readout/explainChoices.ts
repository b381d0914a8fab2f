/**
 * Why whole parts can or cannot be balanced: how many lasers may take each part whole under the division.
 */
import { t } from '../../language/index';
import { wholePartChoices } from '../../build/choices';
import type { Analysis } from '../../build/types';
import type { Explanation } from './explanation';

export function explainChoices({ layout, divisions, parts }: Analysis): Explanation {
  const { several, one, none } = wholePartChoices(layout, divisions, parts);
  const count = parts.length;
  return {
    title: t('Parts with a choice of laser'),
    meaning:
      several === 0
        ? t(
            'No part can go to more than one laser whole, so giving whole parts to lasers decides nothing here. A wider shared band, zones for several lasers or the whole field give them a choice.',
          )
        : t(
            'Under “whole parts” each part goes to one laser that may expose all of it; only parts with two such lasers or more can be balanced.',
          ),
    formula: t('count of parts that two lasers or more hold whole'),
    numbers: [
      t('{several} of {count} have two lasers or more, {one} have one', { several, count, one }),
      t('{none} fit no laser’s zone whole: cut along the zones, or unassigned in part', { none }),
    ],
  };
}
