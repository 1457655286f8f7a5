import { jsonFaultAt } from '../jsonFault.ts';
import type { Problem } from '../problems/problem.ts';
import { inFile } from './inFile.ts';

/** What the text of a file holds as JSON, or why it holds none. */
export function readJson(
  text: string,
): { readonly json: unknown } | { readonly problems: readonly Problem[] } {
  const body = text.replace(/^\ufeff/, '');
  if (body.trim() === '') {
    return whole('empty', 'The file is empty; it must hold one variant as JSON.');
  }
  const fault = jsonFaultAt(body);
  if (fault) {
    return whole(
      'notJson',
      `The file is not JSON: line ${fault.line}, column ${fault.column} has ${fault.found} where something else is needed.`,
    );
  }
  return { json: JSON.parse(body) };
}

function whole(code: string, message: string): { readonly problems: readonly Problem[] } {
  return { problems: [inFile('', code, message)] };
}
