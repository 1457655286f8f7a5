import { toFile, toText } from '../codec.ts';
import { letters, mostVariants } from '../letters.ts';
import type { Problem } from '../problems/problem.ts';
import type { Variant } from '../variant.ts';
import { fromFile } from './fromFile.ts';
import { inFile, isObject, kindOf } from './inFile.ts';
import { readJson } from './json.ts';

/** The variants of a bench, 1 to 4, and the place of the one in hand. */
export interface BenchSet {
  readonly variants: readonly Variant[];
  readonly inHand: number;
}

/** A bench as the text of its file. One variant alone is the file of that variant. */
export function benchToText({ variants, inHand }: BenchSet): string {
  if (variants.length === 1) return toText(variants[0]);
  const file = {
    format: benchFormat,
    version: benchVersion,
    inHand: letters[inHand],
    variants: variants.map(toFile),
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

/** Reads the file of a bench, or of one variant. */
export function benchFromText(text: string): BenchSet | { readonly problems: readonly Problem[] } {
  const read = readJson(text, 'one variant or several');
  if ('problem' in read) return { problems: [read.problem] };
  const file = read.value;
  if (!isObject(file) || file.format !== benchFormat) {
    const one = fromFile(file);
    return 'variant' in one ? { variants: [one.variant], inHand: 0 } : one;
  }
  const problem = headingProblem(file);
  if (problem) return { problems: [problem] };
  const place = (letters as readonly unknown[]).indexOf(file.inHand);
  const readings = (file.variants as unknown[]).map(fromFile);
  const problems = readings.flatMap((reading, place) =>
    'problems' in reading ? reading.problems.map((each) => ofVariant(place, each)) : [],
  );
  if (problems.length > 0) return { problems };
  const variants = readings.flatMap((reading) => ('variant' in reading ? [reading.variant] : []));
  return { variants, inHand: place };
}

function headingProblem({ version, variants, inHand, ...others }: Record<string, unknown>) {
  if (version !== benchVersion) {
    const message = `The bench has version ${JSON.stringify(version) ?? 'missing'}; this Reheat Bench reads version ${benchVersion}.`;
    return inFile('version', 'version', message);
  }
  const unknown = Object.keys(others).find((key) => key !== 'format');
  if (unknown !== undefined) {
    const message = `A bench has no ${unknown}; it has inHand and variants.`;
    return inFile(unknown, 'unknown', message);
  }
  if (!Array.isArray(variants)) {
    const message = `variants must hold a list in brackets; it holds ${kindOf(variants)}.`;
    return inFile('variants', 'notAList', message);
  }
  if (variants.length < 1 || variants.length > mostVariants) {
    const message = `A bench has 1 to ${mostVariants} variants; this one has ${variants.length}.`;
    return inFile('variants', 'count', message);
  }
  const there: readonly unknown[] = letters.slice(0, variants.length);
  if (there.includes(inHand)) return null;
  const message = `inHand must be one of ${there.join(', ')}; it is ${JSON.stringify(inHand) ?? 'missing'}.`;
  return inFile('inHand', 'inHand', message);
}

/** A problem of one variant, with its place in the bench. */
function ofVariant(place: number, problem: Problem): Problem {
  const field = problem.field === '' ? `variants[${place}]` : `variants[${place}].${problem.field}`;
  return { ...problem, field, message: `Variant ${letters[place]}: ${problem.message}` };
}

/** What stands in the file of a bench of several variants under `format`. */
export const benchFormat = 'reheat-bench bench';
const benchVersion = 1;
