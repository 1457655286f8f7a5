import { answer } from './run.ts';

// A reader that has seen enough, such as `head`, closes its end: that is no fault
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code !== 'EPIPE') throw fault;
});

try {
  const { out, problems, exitCode } = await answer(process.argv.slice(2));
  if (out !== '') process.stdout.write(out);
  if (problems.length > 0) process.stderr.write(`${problems.join('\n')}\n`);
  process.exitCode = exitCode;
} catch (fault) {
  const details = fault instanceof Error ? (fault.stack ?? fault.message) : String(fault);
  process.stderr.write(`This is a fault in Reheat Bench, not in the input.\n${details}\n`);
  process.exitCode = 1;
}
