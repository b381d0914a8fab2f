/**
 * The checker of every division: parts and whole have the same area. mm².
 */
import { area } from './region';
import type { Region } from './types';

/** |Σ areas of the parts − area of the whole| / area of the whole; 0 for nothing divided into nothing. */
export function areaBalance(whole: Region, parts: readonly Region[]): number {
  const given = area(whole);
  const found = parts.reduce((sum, part) => sum + area(part), 0);
  if (given === found) return 0;
  return Math.abs(found - given) / (given === 0 ? Math.abs(found) : Math.abs(given));
}
