import { onBuiltApp } from './onBuiltApp.ts';
import { timeDrag } from './dragTimes.ts';
import { quantile } from './quantile.ts';

// Prints how soon the curve follows the sensor on a processor slowed 4 times, on a phone and on a desk.
await onBuiltApp(async (browser, url) => {
  for (const [name, width, height] of [
    ['phone', 390, 844],
    ['desk', 1440, 900],
  ] as const) {
    const page = await browser.newPage({ viewport: { width, height } });
    await page.goto(url);
    // a hot store from which 150 l are drawn, so that each height of the sensor has a curve of its own
    for (const [group, id, text] of [
      ['At the start', '#field-start-hotShare', '100'],
      ['Draw-off', '#field-draw-volume', '150'],
    ]) {
      await page.locator('summary', { hasText: group }).click();
      await page.locator(id).fill(text);
      await page.locator(id).press('Enter');
    }
    await page.waitForTimeout(6000);
    const { moves, toCurve, longestTask } = await timeDrag(page);
    const [median, late] = [quantile(toCurve, 0.5), quantile(toCurve, 0.95)];
    console.log(
      `drag, ${name} ${width} × ${height}, processor slowed 4 times: ${toCurve.length} of ${moves} moves ` +
        `changed the curve; to the painted curve median ${median.toFixed(0)} ms, 95th ${late.toFixed(0)} ms; ` +
        `longest task ${longestTask === 0 ? 'under 50' : longestTask.toFixed(0)} ms`,
    );
    await page.close();
  }
});
