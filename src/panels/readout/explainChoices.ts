/**
 * Why whole parts can or cannot be balanced: how many lasers may take each part whole under the division.
 */
import { wholePartChoices } from '../../build/choices';
import type { Analysis } from '../../build/types';
import type { Explanation } from './explanation';

export function explainChoices({ layout, divisions, parts }: Analysis): Explanation {
  const { several, one, none } = wholePartChoices(layout, divisions, parts);
  const count = parts.length;
  return {
    title: 'Parts with a choice of laser',
    meaning:
      several === 0
        ? 'No part can go to more than one laser whole, so giving whole parts to lasers decides nothing here. A wider shared band, zones for several lasers or the whole field give them a choice.'
        : 'Under “whole parts” each part goes to one laser that may expose all of it; only parts with two such lasers or more can be balanced.',
    formula: 'count of parts that two lasers or more hold whole',
    numbers: [
      `${several} of ${count} have two lasers or more, ${one} have one`,
      `${none} fit no laser’s zone whole: cut along the zones, or unassigned in part`,
    ],
  };
}
