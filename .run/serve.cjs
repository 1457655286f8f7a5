// `npm start`: builds the app and serves the build on the first free local port. Opens nothing.
'use strict';

async function serve() {
  const { build, preview } = await import('vite');
  await build({ logLevel: 'warn' });
  const server = await preview();
  const address = server.resolvedUrls?.local[0];
  if (address === undefined) throw new Error('the preview server gave no local address');
  console.log(`Reheat Bench is at ${address}\nPress Ctrl+C to stop.`);
  stopWithParent(server);
}

/** Stops the server when the npm that started it is stopped, so that none is left holding a port. */
function stopWithParent(server) {
  const parent = process.ppid;
  const watch = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(watch);
    server.close().then(() => process.exit(0));
  }, 500);
}

serve().catch((fault) => {
  console.error(fault);
  process.exit(1);
});
