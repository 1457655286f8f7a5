/** Where a text stops being JSON, counted from 1, and what stands there. */
export interface JsonFault {
  readonly line: number;
  readonly column: number;
  readonly found: string;
}

/**
 * The first place at which a text cannot be JSON any more, or null for proper JSON. Browsers and Node
 * word and count this differently, so the text is read once more here.
 */
export function jsonFaultAt(text: string): JsonFault | null {
  const open: ('{' | '[')[] = [];
  let expected: Expected = 'value';
  for (let at = skipSpace(text, 0); at < text.length;) {
    const token = tokenAt(text, at);
    const next: Expected | null = token === '' ? null : after(expected, token, open);
    if (next === null) return placeOf(text, at);
    expected = next;
    at = skipSpace(text, at + token.length);
  }
  return expected === 'end' ? null : placeOf(text, text.length);
}

type Expected = 'value' | 'valueOrClose' | 'key' | 'keyOrClose' | 'colon' | 'commaOrClose' | 'end';

/** What may follow a token, or null if the token may not stand here; `open` holds the open brackets. */
function after(expected: Expected, token: string, open: ('{' | '[')[]): Expected | null {
  const closed = (): Expected => {
    open.pop();
    return open.length === 0 ? 'end' : 'commaOrClose';
  };
  const closes = token === (open.at(-1) === '{' ? '}' : ']') && open.length > 0;
  switch (expected) {
    case 'valueOrClose':
    case 'value':
      if (closes && expected === 'valueOrClose') return closed();
      if (token === '{' || token === '[') {
        open.push(token);
        return token === '{' ? 'keyOrClose' : 'valueOrClose';
      }
      if (/^[}\],:]/.test(token)) return null;
      return open.length === 0 ? 'end' : 'commaOrClose';
    case 'keyOrClose':
    case 'key':
      if (closes && expected === 'keyOrClose') return closed();
      return token.startsWith('"') ? 'colon' : null;
    case 'colon':
      return token === ':' ? 'value' : null;
    case 'commaOrClose':
      if (closes) return closed();
      return token === ',' ? (open.at(-1) === '{' ? 'key' : 'value') : null;
    case 'end':
      return null;
  }
}

/** The token that starts here, or an empty text. */
function tokenAt(text: string, at: number): string {
  tokens.lastIndex = at;
  return tokens.exec(text)?.[0] ?? '';
}

function skipSpace(text: string, at: number): number {
  spaces.lastIndex = at;
  return at + (spaces.exec(text)?.[0].length ?? 0);
}

function placeOf(text: string, at: number): JsonFault {
  const lines = text.slice(0, at).split('\n');
  const found = at >= text.length ? 'the end of the text' : `“${[...text.slice(at, at + 2)][0]}”`;
  return { line: lines.length, column: lines[lines.length - 1].length + 1, found };
}

const spaces = /[ \t\r\n]*/y;
const tokens =
  // biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids them inside strings
  /[{}[\],:]|"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[0-9a-fA-F]{4}))*"|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?(?![\w.])|(?:true|false|null)(?!\w)/y;
