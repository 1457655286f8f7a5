import type { PoolReply, RunAsked } from '../../shared/poolMessages.ts';

/** As much of a worker as a pool needs. */
export type PoolPort = Pick<Worker, 'postMessage' | 'terminate'> & {
  onmessage: ((event: MessageEvent) => void) | null;
  onerror: ((event: ErrorEvent) => void) | null;
  onmessageerror: ((event: MessageEvent) => void) | null;
};

/** Runs that were posted to a worker together and are not there yet. */
export interface Batch<A> {
  readonly task: number;
  runs: readonly RunAsked<A>[];
  /** One run whose worker died before: nothing else is given to its worker meanwhile. */
  readonly isAlone: boolean;
}

/** A worker of a pool and what it holds. */
export interface Hand<A> {
  readonly port: PoolPort;
  /** In the order in which they are computed. */
  batches: Batch<A>[];
  /** Whether it has said a word. */
  isAwake: boolean;
  /** Looks of the watch in a row at which it held something and had said nothing since the last. */
  silent: number;
}

/** Listens to a worker. @param lose  called once, when it can be relied on no more */
export function takeOn<A, P>(
  port: PoolPort,
  hear: (hand: Hand<A>, reply: PoolReply<P>) => void,
  lose: (hand: Hand<A>, details: string) => void,
): Hand<A> {
  const hand: Hand<A> = { port, batches: [], isAwake: false, silent: 0 };
  port.onmessage = ({ data }) => hear(hand, data as PoolReply<P>);
  port.onerror = (event) => lose(hand, `${event.message} ${event.filename}:${event.lineno}`);
  port.onmessageerror = () => lose(hand, 'a reply could not be read');
  return hand;
}

/** Ends a worker, and what it may still say is not heard. */
export function letGo<A>({ port }: Hand<A>): void {
  port.onmessage = port.onerror = port.onmessageerror = null;
  port.terminate();
}
