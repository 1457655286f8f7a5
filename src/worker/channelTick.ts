/** Makes a function that resolves after messages already waiting have been handed over. */
export function channelTick(): () => Promise<void> {
  // one channel for all ticks: a timer would wait 4 ms each time
  const { port1, port2 } = new MessageChannel();
  const waiting: (() => void)[] = [];
  port1.onmessage = () => waiting.shift()?.();
  return () =>
    new Promise((resolve) => {
      waiting.push(resolve);
      port2.postMessage(null);
    });
}
