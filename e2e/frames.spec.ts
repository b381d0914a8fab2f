/** Plan and readout are one picture: what a drag changes in both changes in one frame. */
import { measureJumps } from '../scripts/bench/frames';
import { expect, grabAndMove, onPlan, openDemo, test } from './page';

test('every jump of a dragged part changes plan and figures in the same frame', async ({ page }) => {
  await openDemo(page);
  // P15, a seal ring of L2, goes over the lines between L1 and L2 and back: every place shares it in another way
  await grabAndMove(page, [130 + 17, -62], [100 + 17, -62]);
  const xs = [5, 0, -5, -12, -17, -11, -6, -1, 4];
  const places = await Promise.all(xs.map((x) => onPlan(page, x + 17, -62)));
  const jumps = await measureJumps(page, '[aria-label="Readout"]', places);
  await page.mouse.up();
  for (const { canvas, readout } of jumps) expect({ canvas, readout }).toEqual({ canvas: [0], readout: [0] });
});
