/** Small plates and a stand-in for the engine: the store only needs to know when it is asked. */
import type { Analysis } from '../../src/build/types';
import { emptyLayout } from '../../src/layout/defaults';
import type { Layout, Part } from '../../src/layout/types';

export const part = (id: string, x: number, y: number, shape = 'block'): Part => ({
  id,
  shape,
  at_mm: [x, y],
  turn_deg: 0,
  seams: 'free',
  laser: null,
  timeFactor: 1,
});

const square = (half: number) =>
  [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ] as const;

/** Two blocks 20 × 20 × 30 and a stepped one to 50 mm. */
export const smallPlate = (): Layout => ({
  ...emptyLayout(),
  name: 'Small plate',
  shapes: {
    block: { slabs: [{ to_mm: 30, rings: [square(10)] }] },
    stepped: {
      slabs: [
        { to_mm: 20, rings: [square(15)] },
        { to_mm: 50, rings: [square(5)] },
      ],
    },
  },
  parts: [part('P01', -60, -60), part('P02', 60, -60), part('P03', 0, 60, 'stepped')],
});

/** Counts its calls; gives back only what the store itself reads. */
export function countingAnalyse() {
  const asked: Layout[] = [];
  const analyse = (layout: Layout): Analysis => {
    asked.push(layout);
    return { layout, stretches: [] } as unknown as Analysis;
  };
  return { asked, analyse };
}
