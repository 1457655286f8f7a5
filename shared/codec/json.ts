import { jsonFaultAt } from '../jsonFault.ts';
import type { Problem } from '../problems/problem.ts';
import { inFile } from './inFile.ts';

/** What a text holds as JSON, or the one sentence on why it is none. @param holds  `one variant` */
export function readJson(
  text: string,
  holds: string,
): { readonly value: unknown } | { readonly problem: Problem } {
  const body = text.replace(/^\ufeff/, '');
  if (body.trim() === '') {
    return whole('empty', `The file is empty; it must hold ${holds} as JSON.`);
  }
  const fault = jsonFaultAt(body);
  if (fault) {
    return whole(
      'notJson',
      `The file is not JSON: line ${fault.line}, column ${fault.column} has ${fault.found} where something else is needed.`,
    );
  }
  return { value: JSON.parse(body) };
}

function whole(code: string, message: string): { readonly problem: Problem } {
  return { problem: inFile('', code, message) };
}
