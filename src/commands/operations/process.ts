/**
 * Process numbers, limits, allocation rule and the layout's own words, as typed: a result says what was wrong.
 */
import type { Result } from '../../layout/result';
import type { AllocationRule, Layout, Limits, Process } from '../../layout/types';
import { reviewed } from './review';

/** Typed fields of the process; a fault where a value is out of its range. */
export const setProcess = (layout: Layout, fields: Partial<Process>): Result<Layout> =>
  reviewed(layout, { ...layout, process: { ...layout.process, ...fields } });

/** Typed limits (crumbs, plume, spacing, chain gap). */
export const setLimits = (layout: Layout, fields: Partial<Limits>): Result<Layout> =>
  reviewed(layout, { ...layout, limits: { ...layout.limits, ...fields } });

/** Name and note of the layout. */
export const setTexts = (layout: Layout, texts: Partial<Pick<Layout, 'name' | 'note'>>): Result<Layout> =>
  reviewed(layout, { ...layout, ...texts });

/** Who takes shared load; the layout itself where nothing changes. */
export const setAllocation = (layout: Layout, allocation: AllocationRule): Layout =>
  layout.allocation === allocation ? layout : { ...layout, allocation };
