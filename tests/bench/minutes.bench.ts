import { presetNamed, presetVariant } from '../../shared/presets.ts';
import type { Variant } from '../../shared/variant.ts';
import type { Reply, Request } from '../../shared/messages.ts';
import { median } from './quantile.ts';
import { onBuiltApp } from './onBuiltApp.ts';
import { minutesByCause, timeWithout } from '../../sim/run/minutes.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { removable } from '../../sim/run/withoutCauses.ts';

// Prints how soon the minutes by cause are there in Chromium, estimated and exact, and how soon they stop.
const named = (key: string): Variant => {
  const preset = presetNamed(key);
  if (!preset) throw new Error(`${key} is no example`);
  return presetVariant(preset);
};

await onBuiltApp(async (browser, url) => {
  const page = await browser.newPage();
  const worker = page.waitForEvent('worker');
  await page.goto(url);
  const script = (await worker).url();
  await page.goto('about:blank'); // so that the app’s own work is over
  await page.goto(script); // the worker has to come from the same place
  for (const [key, words] of [
    ['heating-shares', 'all but scale'],
    ['family-as-found', 'all but heating'],
  ] as const) {
    const variant = named(key);
    const rounds: Awaited<ReturnType<typeof timed>>[] = [];
    for (let round = 0; round < 5; round++) {
      rounds.push(await page.evaluate(timed, { script, variant }));
    }
    const of = (what: keyof (typeof rounds)[number]) =>
      `${median(rounds.map((each) => each[what])).toFixed(0)} ms`;
    console.log(
      `minutes of ${key}, ${words}: first bars ${of('first')} (bar 300 ms), exact ${of('exact')} (bar 3000 ms), ` +
        `stopped half-way for a run that is there after ${of('stopped')} in place of ${of('reheat')} (bar 150 ms more), remembered ${of('again')}`,
    );
    console.log(`  in Node: ${counted(variant)} calls of the derivative in all`);
  }
});

/** Calls of the derivative in all runs. */
function counted(variant: Variant): number {
  const from = removable(variant);
  const { whole, ideal } = toEnd(minutesByCause(variant));
  const longest = 2 * Math.max(whole ?? 0, ideal ?? 0);
  let calls = 0;
  for (let set = 0; set < 2 ** from.present.length; set++) {
    const removed = from.present.filter((_, player) => (set & (2 ** player)) !== 0);
    calls += toEnd(timeWithout(from, removed, longest)).marched?.cost.derivativeCalls ?? 0;
  }
  return calls;
}

/** In the page: a worker of its own, asked for a run, for the minutes, again, and for something else half-way. */
async function timed({ script, variant }: { script: string; variant: Variant }) {
  const port = new Worker(script, { type: 'module' });
  let number = 0;
  /** Sends a request and waits for the first reply that is meant, ms. */
  const until = (request: Partial<Request>, isMeant: (reply: Reply) => boolean) =>
    new Promise<number>((resolve) => {
      number++;
      const mine = number;
      const sent = performance.now();
      port.addEventListener('message', function hear({ data }: MessageEvent<Reply>) {
        if (data.number !== mine || !isMeant(data)) return;
        port.removeEventListener('message', hear);
        resolve(performance.now() - sent);
      });
      port.postMessage({ kind: 'run', number: mine, variant, studies: false, ...request });
    });
  const isMinutes = (reply: Reply) => reply.kind === 'study' && reply.study.kind === 'minutes';
  const isExact = (reply: Reply) =>
    reply.kind === 'study' && reply.study.kind === 'minutes' && reply.study.runs === reply.study.of;
  const why = { why: true, studies: true } as Partial<Request>;

  for (let warm = 0; warm < 3; warm++) await until({}, ({ kind }) => kind === 'finished');
  const reheat = await until({}, ({ kind }) => kind === 'finished');
  // each time a variant that is not remembered yet
  const asked = (output: number) =>
    ({
      ...why,
      variant: { ...variant, boiler: { ...variant.boiler, output } },
    }) as Partial<Request>;
  const { output } = variant.boiler;
  const first = await until(asked(output + 1), isMinutes);
  const exact = await until(asked(output + 2), isExact);
  const again = await until(asked(output + 2), isExact);
  void until(asked(output + 3), isMinutes);
  await new Promise((resolve) => setTimeout(resolve, 400));
  const stopped = await until({}, ({ kind }) => kind === 'finished');
  port.terminate();
  return { reheat, first, exact, again, stopped };
}
