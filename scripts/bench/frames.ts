/**
 * What a drag costs in a real page. The watcher runs inside the page: time from frame to frame, long tasks
 * (over 50 ms, as the browser itself reports them), and in which frames the canvas and the readout changed.
 */
import type { Page } from '@playwright/test';

export interface DragFigures {
  readonly frames_ms: readonly number[];
  readonly longTasks_ms: readonly number[];
  readonly together: number;
  readonly canvasAlone: number;
  readonly readoutAlone: number;
}
interface Watch {
  frames_ms: number[];
  longTasks_ms: number[];
  canvas: Set<number>;
  readout: Set<number>;
  stop: () => void;
}
declare global {
  interface Window {
    watch: Watch;
  }
}

/** Starts watching; `readout` is the selector of what holds the figures. */
const startInPage = (readout: string): void => {
  const watch: Watch = {
    frames_ms: [],
    longTasks_ms: [],
    canvas: new Set(),
    readout: new Set(),
    stop: () => {},
  };
  let frame = 0;
  let last = performance.now();
  let running = true;
  // what happens between two paintings belongs to one frame: count on when the picture is out, not before
  const painted = new MessageChannel();
  painted.port1.onmessage = () => frame++;
  const tick = (now: number): void => {
    watch.frames_ms.push(now - last);
    last = now;
    painted.port2.postMessage(null);
    if (running) requestAnimationFrame(tick);
  };
  requestAnimationFrame(tick);
  const tasks = new PerformanceObserver((list) => {
    for (const entry of list.getEntries()) watch.longTasks_ms.push(entry.duration);
  });
  tasks.observe({ type: 'longtask' });
  // the plumes are deferred by design: they follow when the frame leaves time
  const deferred = (node: Node): boolean => node.parentElement?.closest('.plumes') != null;
  const texts = new MutationObserver((records) => {
    if (records.some(({ target }) => !deferred(target))) watch.readout.add(frame);
  });
  const element = document.querySelector(readout);
  if (element === null) throw new Error(`nothing at ${readout}`);
  texts.observe(element, { characterData: true, childList: true, attributes: true, subtree: true });
  const { clearRect } = CanvasRenderingContext2D.prototype;
  CanvasRenderingContext2D.prototype.clearRect = function (...box) {
    watch.canvas.add(frame);
    return clearRect.apply(this, box);
  };
  watch.stop = () => {
    running = false;
    tasks.disconnect();
    texts.disconnect();
    CanvasRenderingContext2D.prototype.clearRect = clearRect;
  };
  window.watch = watch;
};

const stopInPage = (): DragFigures => {
  const { frames_ms, longTasks_ms, canvas, readout, stop } = window.watch;
  stop();
  const together = [...canvas].filter((frame) => readout.has(frame)).length;
  return {
    frames_ms: frames_ms.slice(1),
    longTasks_ms,
    together,
    canvasAlone: canvas.size - together,
    readoutAlone: readout.size - together,
  };
};

/** What one jump of the mouse changed, as frames counted from the jump. */
export interface Jump {
  readonly canvas: readonly number[];
  readonly readout: readonly number[];
}

/** Begins the count anew; the jump comes next. */
const forgetInPage = (): void => {
  window.watch.canvas.clear();
  window.watch.readout.clear();
};
/** Frames in which something changed, after the page has had `frames` frames for it. */
const changedInPage = async (frames: number): Promise<Jump> => {
  for (let i = 0; i < frames; i++) await new Promise(requestAnimationFrame);
  const { canvas, readout } = window.watch;
  const first = Math.min(...canvas, ...readout);
  const since = (changed: ReadonlySet<number>) => [...changed].map((frame) => frame - first);
  return { canvas: since(canvas), readout: since(readout) };
};

/**
 * Drags by single jumps, with frames of rest after each: a figure that came a frame late would stand alone. Leaves the
 * button down where the mouse ended.
 */
export const measureJumps = async (
  page: Page,
  readout: string,
  places: readonly (readonly [number, number])[],
  restFrames = 6,
): Promise<Jump[]> => {
  await page.evaluate('globalThis.__name ??= (named) => named');
  await page.evaluate(startInPage, readout);
  const jumps: Jump[] = [];
  for (const place of places) {
    await page.evaluate(forgetInPage);
    await page.mouse.move(...place);
    jumps.push(await page.evaluate(changedInPage, restFrames));
  }
  await page.evaluate(stopInPage);
  return jumps;
};

/** Drags with the mouse from one place of the window to another and back, from the press to after the release. */
export const measureDrag = async (
  page: Page,
  readout: string,
  from: readonly [number, number],
  to: readonly [number, number],
  moves: number,
): Promise<DragFigures> => {
  // tsx names inner functions by a helper of its own, which the page does not have
  await page.evaluate('globalThis.__name ??= (named) => named');
  await page.mouse.move(...from);
  await page.evaluate(startInPage, readout);
  await page.mouse.down();
  for (let i = 1; i <= moves; i++) {
    const share = Math.sin((Math.PI * 2 * i) / moves);
    await page.mouse.move(from[0] + (to[0] - from[0]) * share, from[1] + (to[1] - from[1]) * share);
  }
  await page.mouse.up();
  // what the release sets off counts as well
  await page.waitForTimeout(500);
  return page.evaluate(stopInPage);
};
