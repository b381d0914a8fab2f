/** A computation of the whole height that fails is told of, and the page does not say for ever that it goes on. */
import { expect, test } from 'vitest';
import { moveParts } from '../../src/commands/operations';
import { createWorkbench } from '../../src/store/workbench';
import type { HeightNews } from '../../src/worker/heights';
import { smallPlate } from './plates';

/** Four thousand slabs, no two neighbours alike: too many for a frame. */
function highPlate() {
  const plate = smallPlate();
  const slabs = Array.from({ length: 4000 }, (_, k) => {
    const half = 10 + (k % 2);
    const ring = [
      [-half, -half],
      [half, -half],
      [half, half],
      [-half, half],
    ] as const;
    return { to_mm: (k + 1) * 0.05, rings: [ring] };
  });
  return { ...plate, shapes: { ...plate.shapes, block: { slabs } } };
}

test('failed stands until the next question', () => {
  let hear: ((news: HeightNews) => void) | undefined;
  let asked = 0;
  const bench = createWorkbench({
    layout: highPlate(),
    heights: { ask: () => void asked++, listen: (listener) => void (hear = listener) },
  });
  const height = () => bench.store.getState().height;
  expect(asked).toBe(1);
  expect(height()).toMatchObject({ progress: 0, failed: false });
  hear!({ kind: 'failed', detail: 'out of memory' });
  expect(height()).toMatchObject({ progress: null, failed: true });
  expect(bench.store.getState().view.notices.map(({ fault }) => fault.code)).toContain('height-not-computed');
  bench.change('move', (layout) => moveParts(layout, ['P01'], 1, 0));
  expect(asked).toBe(2);
  expect(height()).toMatchObject({ progress: 0, failed: false });
});
