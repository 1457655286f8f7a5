import type { CDPSession, Page } from 'playwright';

/** Times of one drag, ms. */
export interface DragTimes {
  readonly moves: number;
  /** From a move of the pointer to the frame in which the curve has changed. */
  readonly toCurve: readonly number[];
  /** The longest task of the page while the drag went on; 0 when none reached 50 ms. */
  readonly longestTask: number;
}

/**
 * Drags the sensor up and down in 60 moves on a processor slowed 4 times and times what is painted.
 * @param page  the app, with a result on it
 */
export async function timeDrag(page: Page): Promise<DragTimes> {
  const session = await page.context().newCDPSession(page);
  await slow(session, 4);
  await page.locator('[data-handle=sensor]').scrollIntoViewIfNeeded();
  await page.waitForTimeout(500); // until what the scrolling itself paints is over
  await page.evaluate(watchTasks);
  const box = await page.locator('[data-handle=sensor]').boundingBox();
  if (!box) throw new Error('the sensor has no handle to drag');
  const stride = (page.viewportSize()?.width ?? 0) < 700 ? PHONE_STRIDE : STRIDE;
  const x = box.x + box.width / 2;
  const y = box.y + box.height / 2;
  await page.mouse.move(x, y);
  await page.mouse.down();
  const toCurve: number[] = [];
  for (let move = 1; move <= MOVES; move++) {
    // up the cylinder and back, each move far enough for a new height
    const place = move % (2 * TURN);
    const up = stride * Math.min(place, 2 * TURN - place);
    const painted = page.evaluate(untilCurveChanges);
    await page.mouse.move(x, y - up);
    const time = await painted;
    if (time !== null) toCurve.push(time);
  }
  await page.mouse.up();
  const longestTask = await page.evaluate(
    () => (window as unknown as { longestTask: number }).longestTask,
  );
  await slow(session, 1);
  return { moves: MOVES, toCurve: toCurve.sort((a, b) => a - b), longestTask };
}

const slow = (session: CDPSession, rate: number) =>
  session.send('Emulation.setCPUThrottlingRate', { rate });

/** In the page: notes the longest task from now on. */
function watchTasks() {
  const noted = window as unknown as { longestTask: number };
  noted.longestTask = 0;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) {
      noted.longestTask = Math.max(noted.longestTask, duration);
    }
  }).observe({ entryTypes: ['longtask'] });
}

/**
 * In the page: from the next move of the pointer until a changed curve has been painted, ms.
 * Null when no curve changes within a second.
 */
function untilCurveChanges(): Promise<number | null> {
  return new Promise((resolve) => {
    addEventListener(
      'pointermove',
      ({ timeStamp }) => {
        const finish = (time: number | null) => {
          observer.disconnect();
          clearTimeout(patience);
          resolve(time);
        };
        const painted = () => {
          // a message sent from a frame is handed over after the frame has been painted
          const { port1, port2 } = new MessageChannel();
          port1.onmessage = () => finish(performance.now() - timeStamp);
          requestAnimationFrame(() => port2.postMessage(null));
        };
        const observer = new MutationObserver(painted);
        const patience = setTimeout(() => finish(null), 1000);
        for (const svg of document.querySelectorAll('.curve svg')) {
          observer.observe(svg, { attributes: true, attributeFilter: ['d'], subtree: true });
        }
      },
      { once: true, capture: true },
    );
  });
}

const MOVES = 60;
// pixels: more than the one step of 0.02 m, 2 on a phone and 6 on a desk, and all within the cylinder
const PHONE_STRIDE = 4;
const STRIDE = 8;
const TURN = 12; // moves
