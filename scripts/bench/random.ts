/** Seeded random numbers (mulberry32, public domain), so that every run of the bench sees the same plate. */
export type Random = () => number;

export const seeded = (seed: number): Random => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
};
export const between = (random: Random, low: number, high: number): number => low + (high - low) * random();
