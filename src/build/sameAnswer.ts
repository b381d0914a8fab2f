/** Whether what is remembered answers a question whose parts moved, without any number of theirs changing. */
import type { Border, DividedSection, Fragment } from '../exposure/types';
import { sameParts, type Asked, type Known } from './recall';

const sameFragment = (a: Fragment, b: Fragment): boolean =>
  a.set === b.set &&
  a.cell === b.cell &&
  a.area_mm2 === b.area_mm2 &&
  a.hatch_mm2 === b.hatch_mm2 &&
  a.outline_mm === b.outline_mm;

const sameBorder = (a: Border, b: Border): boolean =>
  a.a === b.a && a.b === b.b && a.length_mm === b.length_mm;

const sameNumbers = (a: DividedSection, b: DividedSection): boolean =>
  a.area_mm2 === b.area_mm2 &&
  a.unassigned_mm2 === b.unassigned_mm2 &&
  a.fragments.length === b.fragments.length &&
  a.borders.length === b.borders.length &&
  a.fragments.every((fragment, i) => sameFragment(fragment, b.fragments[i])) &&
  a.borders.every((border, i) => sameBorder(border, b.borders[i]));

/** The same parts, each where it stood or moved without any number of it changing. */
export const sameAnswer = <F>(old: Known<F>, now: Asked): boolean =>
  sameParts(old, now, (before, after, part) => !old.drafted.has(part) && sameNumbers(before, after));
