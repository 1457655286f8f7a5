import { createHash } from 'node:crypto';
import { stat } from 'node:fs/promises';
import type { Writable } from 'node:stream';
import { askedFileKey } from '../../../shared/asked.ts';
import { toFile } from '../../../shared/codec.ts';
import { paragraph } from '../layout.ts';
import { whyNotRead } from '../read.ts';
import type { BatchCommand, Part } from './args.ts';
import { type Crew, poolCrew } from './crew.ts';
import { type Finished, finishedRows } from './finished.ts';
import { inOrder } from './inOrder.ts';
import { type Loaded, loadStudy } from './load.ts';
import { ProgressBar, type Terminal } from './progressBar.ts';
import { addCautions, type CautionCount, headLine, rowStart, type Task } from './rows.ts';
import { fileSink, type Sink, streamSink } from './sink.ts';

/** What a batch reads, writes and is done by; others in tests. */
export interface Surroundings {
  readonly out: Writable;
  readonly err: Terminal;
  readonly crew: (jobs: number | null) => Promise<Crew>;
}

/** How a batch ended: everything to be put right, and whether a run ended early. */
export interface BatchEnd {
  readonly problems: readonly string[];
  readonly early: boolean;
}

const usual = (): Surroundings => ({ out: process.stdout, err: process.stderr, crew: poolCrew });

/** Computes every row of a study, or of a part of it, and writes each as soon as those before it are written. */
export async function batch(
  command: Extract<BatchCommand, { kind: 'batch' }>,
  around: Surroundings = usual(),
): Promise<BatchEnd> {
  const loaded = await loadStudy(command.study);
  if ('problems' in loaded) return { problems: loaded.problems, early: false };
  const crew = await around.crew(command.jobs);
  try {
    return await computed(command, around, loaded, crew);
  } finally {
    await crew.dismiss();
  }
}

async function computed(
  { out, resume, part, form }: Extract<BatchCommand, { kind: 'batch' }>,
  around: Surroundings,
  { base, points, measures }: Loaded,
  crew: Crew,
): Promise<BatchEnd> {
  const [from, to] = bounds(part, points.count);
  const content = [toFile(base), points.content, measures.map(askedFileKey), crew.program];
  const mark = createHash('sha256').update(JSON.stringify(content)).digest('hex').slice(0, 12);
  const { words, paths } = points;
  const kind = { base, words, paths, measures, form, mark };
  // in the first part alone, so that the parts one after the other are the whole
  const head = part.number === 1 ? headLine(kind) : '';
  let finished: Finished = { rows: 0, bytes: 0, early: 0 };
  if (out !== null) {
    const before = await rowsBefore(out, resume, {
      head,
      startOf: (index) => rowStart(kind, from + index + 1),
      most: to - from,
    });
    if ('problem' in before) return { problems: [`${out}: ${before.problem}`], early: false };
    finished = before;
  }
  let rows = finished.rows;
  let { early } = finished;
  const cautions = new Map<string, CautionCount>();
  const bar = new ProgressBar(around.err, to - from, rows);
  let sink: Sink | null = null;
  try {
    const sinkNow: Sink =
      out === null ? streamSink(around.out) : await fileSink(out, finished.bytes);
    sink = sinkNow;
    if (finished.bytes === 0 && head !== '') await sinkNow.write(head);
    bar.show(rows);
    await inOrder(tasksOf(kind, points, from + rows, to), crew, async (done) => {
      await sinkNow.write(done.text);
      rows += done.rows;
      early += done.early;
      addCautions(cautions, done.cautions);
      bar.show(rows);
    });
  } catch (fault) {
    const code = (fault as NodeJS.ErrnoException).code;
    if (out === null && code === 'EPIPE') return { problems: [], early: false }; // a reader that has seen enough
    if (out === null || code === undefined) throw fault;
    return { problems: [`${out}: ${whyNotRead(fault)}`], early: false };
  } finally {
    bar.clear();
    await sink?.close();
  }
  warn(around.err, cautions, rows - finished.rows);
  return { problems: [], early: early > 0 };
}

/** The first row of a part, from 0, and the one after its last. */
function bounds({ number, of }: Part, count: number): [number, number] {
  return [Math.floor(((number - 1) * count) / of), Math.floor((number * count) / of)];
}

/** The rows that a file has already; one with rows is left alone where it is not to be gone on with. */
async function rowsBefore(
  file: string,
  resume: boolean,
  expected: Parameters<typeof finishedRows>[1],
): Promise<Finished | { readonly problem: string }> {
  const nothing = { rows: 0, bytes: 0, early: 0 };
  try {
    const { size } = await stat(file);
    if (size === 0) return nothing;
    if (!resume) {
      return {
        problem: 'the file is not empty; --resume goes on with it, or name another file.',
      };
    }
    const found = await finishedRows(file, expected);
    if (!('strangeLine' in found)) return found;
    return {
      problem:
        `line ${found.strangeLine} is not the row of this study that belongs there: the file was written for ` +
        'another study or part, or by another version; name another file.',
    };
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'ENOENT') return nothing;
    return { problem: whyNotRead(fault) };
  }
}

/** The rows from one to another, a few at a time. */
async function* tasksOf(
  kind: Omit<Task, 'from' | 'rows'>,
  points: Loaded['points'],
  from: number,
  to: number,
): AsyncGenerator<Task> {
  let next = from;
  for await (const some of points.between(from, to)) {
    for (let start = 0; start < some.length; start += ROWS_OF_A_TASK) {
      const rows = some.slice(start, start + ROWS_OF_A_TASK);
      yield { ...kind, from: next + 1, rows };
      next += rows.length;
    }
  }
  if (next < to) throw new Error(`the study gave ${next} rows; expected ${to}`);
}

/** The cautions that apply to any row, and to how many. */
function warn(err: Terminal, cautions: Map<string, CautionCount>, of: number): void {
  if (cautions.size === 0) return;
  const lines = [...cautions.values()].map(({ text, varies, rows }) => {
    const many = rows === of ? '' : `${rows} of ${of} rows${varies ? '' : ': '}`;
    const first = varies ? `${many === '' ? 'Every row' : many}; the first of them: ` : many;
    return paragraph(`${first}${text}`, '  - ');
  });
  err.write(`Cautions\n${lines.join('\n')}\n`);
}

const ROWS_OF_A_TASK = 8;
