import type { PoolRequest } from '../../shared/poolMessages.ts';
import { channelTick } from '../../src/worker/channelTick.ts';
import { computing } from '../../src/worker/computing.ts';
import type { PoolPort } from '../../src/worker/poolHand.ts';

/** A worker of a pool on this side: it squares numbers, in as many steps as asked, and can be killed. */
export class PoolStand implements PoolPort {
  onmessage: PoolPort['onmessage'] = null;
  onerror: PoolPort['onerror'] = null;
  onmessageerror: PoolPort['onmessageerror'] = null;
  readonly asked: PoolRequest<number, number>[] = [];
  isEnded = false;
  /** Runs it finished, whether it could still tell of them or not. */
  finished = 0;
  #clock = 0; // moves by 3 ms at each look, so that a slice holds about 3 steps
  readonly #answer: (request: PoolRequest<number, number>) => void;

  /**
   * @param poison  a number that kills it, when it comes to it
   * @param broken  a number it cannot square
   */
  constructor(poison: number | null = null, broken: number | null = null) {
    const steps = this.#steps.bind(this);
    this.#answer = computing<number, number, number>(
      function* (job, asked) {
        yield* steps(job, asked === poison);
        if (asked === broken) throw new Error(`${asked} cannot be squared`);
        return asked * asked;
      },
      { post: (reply) => this.#say(reply), tick: channelTick(), now: () => (this.#clock += 3) },
    );
    queueMicrotask(() => this.#say({ kind: 'awake' }));
  }

  *#steps(count: number, isPoison: boolean): Generator<number> {
    for (let step = 0; step < count && !this.isEnded; step += 1) yield step;
    if (isPoison) this.die();
    if (this.isEnded) throw new Error('what is dead finds nothing');
    this.finished += 1;
  }

  #say(data: unknown): void {
    if (!this.isEnded) queueMicrotask(() => this.onmessage?.({ data } as MessageEvent));
  }

  postMessage(request: PoolRequest<number, number>) {
    this.asked.push(request);
    if (!this.isEnded) this.#answer(structuredClone(request));
  }

  /** Ends without a word, as `terminate` does. */
  terminate() {
    this.isEnded = true;
  }

  /** Ends as a worker does in which something broke. */
  die() {
    this.isEnded = true;
    queueMicrotask(() =>
      this.onerror?.({ message: 'out of memory', filename: 'a', lineno: 1 } as ErrorEvent),
    );
  }
}
