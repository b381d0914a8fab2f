/**
 * The plan's camera. Expected values: mathematics, on boxes and places chosen by hand. Plate millimetres with x to the right
 * and y to the back, screen pixels with top downwards; insets and ends of the zoom are our own choice (no source).
 */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  bringInto,
  FIT_INSETS,
  fitBox,
  fitCamera,
  panBy,
  platformBox,
  plateTransform,
  toPlate,
  toScreen,
  zoomAt,
} from '../../src/canvas/camera';

const size = { width: 840, height: 560 };
const scale = fc.double({ min: 0.05, max: 300, noNaN: true });
const mm = fc.double({ min: -500, max: 500, noNaN: true });
const camera = fc.record({ centreX_mm: mm, centreY_mm: mm, pxPerMm: scale });

describe('camera', () => {
  it('goes to the screen and back without loss', () => {
    fc.assert(
      fc.property(camera, mm, mm, (at, x, y) => {
        const back = toPlate(toScreen({ x, y }, at, size), at, size);
        expect(back.x).toBeCloseTo(x, 8);
        expect(back.y).toBeCloseTo(y, 8);
      }),
      { seed: 3 },
    );
  });

  it('shows +y, the back of the platform, higher on the screen', () => {
    const at = fitCamera(340, 340, size);
    expect(toScreen({ x: 0, y: 100 }, at, size).top).toBeLessThan(toScreen({ x: 0, y: 0 }, at, size).top);
    expect(toScreen({ x: 100, y: 0 }, at, size).left).toBeGreaterThan(
      toScreen({ x: 0, y: 0 }, at, size).left,
    );
  });

  it('fits the whole platform between the insets', () => {
    for (const [width, depth] of [
      [340, 340],
      [800, 400],
      [100, 600],
    ] as const) {
      const at = fitCamera(width, depth, size);
      const front = toScreen({ x: -width / 2, y: -depth / 2 }, at, size);
      const rear = toScreen({ x: width / 2, y: depth / 2 }, at, size);
      expect(front.left).toBeGreaterThanOrEqual(FIT_INSETS.left - 1e-9);
      expect(rear.left).toBeLessThanOrEqual(size.width - FIT_INSETS.right + 1e-9);
      expect(rear.top).toBeGreaterThanOrEqual(FIT_INSETS.top - 1e-9);
      expect(front.top).toBeLessThanOrEqual(size.height - FIT_INSETS.bottom + 1e-9);
    }
  });

  it('keeps the point under the pointer when it zooms', () => {
    fc.assert(
      fc.property(camera, fc.double({ min: 0.2, max: 5, noNaN: true }), (at, factor) => {
        const pointer = { left: 123, top: 456 };
        const fixed = toPlate(pointer, at, size);
        const after = toPlate(pointer, zoomAt(at, pointer, factor, size), size);
        expect(after.x).toBeCloseTo(fixed.x, 8);
        expect(after.y).toBeCloseTo(fixed.y, 8);
      }),
      { seed: 5 },
    );
  });

  it('stops zooming at its ends instead of losing the plate', () => {
    let at = fitCamera(340, 340, size);
    for (let i = 0; i < 200; i++) at = zoomAt(at, { left: 400, top: 300 }, 2, size);
    expect(at.pxPerMm).toBe(400);
    for (let i = 0; i < 200; i++) at = zoomAt(at, { left: 400, top: 300 }, 0.5, size);
    expect(at.pxPerMm).toBe(0.02);
  });

  it('pans so that what is grabbed follows the pointer', () => {
    const at = fitCamera(340, 340, size);
    const grabbed = toPlate({ left: 300, top: 200 }, at, size);
    const after = toScreen(grabbed, panBy(at, 25, -40), size);
    expect(after.left).toBeCloseTo(325, 9);
    expect(after.top).toBeCloseTo(160, 9);
  });

  it('draws plate millimetres where toScreen puts them', () => {
    fc.assert(
      fc.property(camera, mm, mm, (at, x, y) => {
        const [a, b, c, d, e, f] = plateTransform(at, size);
        const p = toScreen({ x, y }, at, size);
        expect(a * x + c * y + e).toBeCloseTo(p.left, 6);
        expect(b * x + d * y + f).toBeCloseTo(p.top, 6);
      }),
      { seed: 9 },
    );
  });

  const platform = platformBox(340, 340);
  const square = (x: number, y: number) => ({ minX: x - 20, minY: y - 20, maxX: x + 20, maxY: y + 20 });
  const seen = (box: ReturnType<typeof square>, at: ReturnType<typeof fitCamera>): boolean =>
    [
      [box.minX, box.minY],
      [box.maxX, box.maxY],
    ].every(([x, y]) => {
      const { left, top } = toScreen({ x: x!, y: y! }, at, size);
      return left >= 40 && left <= size.width && top >= 0 && top <= size.height - 24;
    });

  it('fits any box between the insets', () => {
    const box = { minX: 900, minY: -50, maxX: 1900, maxY: 50 };
    const at = fitBox(box, size);
    expect(toScreen({ x: 900, y: 0 }, at, size).left).toBeCloseTo(FIT_INSETS.left, 6);
    expect(toScreen({ x: 1900, y: 0 }, at, size).left).toBeCloseTo(size.width - FIT_INSETS.right, 6);
  });

  it('stays where it is when what is asked for is in sight', () => {
    const at = fitCamera(340, 340, size);
    expect(bringInto(square(100, 100), platform, at, size)).toBe(at);
  });

  it('shows a part beside the platform together with it', () => {
    const at = bringInto(square(500, 0), platform, fitCamera(340, 340, size), size);
    expect(seen(square(500, 0), at)).toBe(true);
    expect(seen(square(-150, -150), at)).toBe(true);
  });

  it('goes to a part ten metres away without zooming out to nothing', () => {
    const before = fitCamera(340, 340, size);
    const at = bringInto(square(10_000, 0), platform, before, size);
    expect(seen(square(10_000, 0), at)).toBe(true);
    expect(at.pxPerMm).toBe(before.pxPerMm);
  });

  it('shows a part larger than the sight whole', () => {
    const at = bringInto(
      { minX: 150, minY: -20, maxX: 190, maxY: 20 },
      platform,
      { ...fitCamera(340, 340, size), pxPerMm: 300 },
      size,
    );
    expect(toScreen({ x: 190, y: 0 }, at, size).left).toBeLessThanOrEqual(size.width);
    expect(toScreen({ x: 150, y: 0 }, at, size).left).toBeGreaterThanOrEqual(40);
  });
});
