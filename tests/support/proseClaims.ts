import { componentPassages, markdownPassages, scriptPassages } from './passages.ts';
import type { ProjectFile } from './projectFiles.ts';

/**
 * The sentences a person may read in a file: of the strings of a program, of the text of a component, of
 * the paragraphs, lists and tables of a Markdown file. What is computed stands as `…`.
 */
export function sentencesOf({ path, text }: ProjectFile): string[] {
  const passages = path.endsWith('.svelte')
    ? componentPassages(text)
    : path.endsWith('.md')
      ? markdownPassages(text)
      : scriptPassages(text);
  return [...new Set(passages.flatMap(inSentences))];
}

/** True where a sentence has a word that compares or moves. */
export function isDirectional(sentence: string): boolean {
  const plain = sentence.replace(thresholds, '').replace(amounts, '');
  return compares.test(plain) || moves.test(plain) || measures.test(plain);
}

/** True for the files whose sentences must be answered for. */
export function isProse(path: string): boolean {
  return (
    path === 'README.md' ||
    /^shared\/(sentences|fields)\/.*\.ts$/.test(path) ||
    /^shared\/(causes|cautions|dayCautions|arrangements|notModelled)\.ts$/.test(path) ||
    /^src\/explain\/.*\.(ts|svelte)$/.test(path) ||
    /^sim\/closures\/.*\.ts$/.test(path)
  );
}

function inSentences(passage: string): string[] {
  return passage
    .replaceAll('\u00a0', ' ')
    .replace(/\s+/g, ' ')
    .split(/(?<=[.!?])\s+(?=[A-Z…])/)
    .map((sentence) => sentence.trim())
    .filter((sentence) => /[a-z]/i.test(sentence));
}

const compares =
  /\b(more|less|fewer|higher|lower|longer|shorter|sooner|later|earlier|faster|slower|quicker|warmer|colder|hotter|cooler|larger|smaller|bigger|greater|wider|narrower|thicker|thinner|steeper|flatter|tighter|looser|stronger|weaker|better|worse|harder|easier|nearer|closer|further|farther|deeper|fuller|poorer|rougher|smoother|cheaper|dearer|heavier|lighter|finer|coarser|older|younger)\b/i;
const moves =
  /\b(rises?|rising|falls?|falling|grows?|growing|shrinks?|raises?|lowers|increases?|decreases?|reduces?|drops|slows?|speeds? up|widens?|narrows|shortens?|lengthens?|climbs?|fades?|spares|doubles?|halves|gains|saves?|spoils|outweighs)\b/i;
const measures =
  /\b(soon|often|seldom|twice|half|thrice|never|always|hardly|whatever|however|however much|proportion(al)?|too (little|much|few)|(two|three|four|five|ten) times)\b/i;

// a limit, such as `at 60 °C or more`, is no direction
const thresholds =
  /(?<=[\d…] ?(?:°C|K|l|%|ms?)? ?)or (?:more|less)|\bno (?:more|less) than (?=[\d…])|\bno longer\b/g;
const amounts = /\bhalf[- ](?:shut|way|past|an hour|a metre)\b/gi;
