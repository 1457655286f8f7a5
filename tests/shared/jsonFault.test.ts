import fc from 'fast-check';
import { expect, test } from 'vitest';
import { jsonFaultAt } from '../../shared/jsonFault.ts';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

test('500 values written as JSON have no fault', () => {
  fc.assert(
    fc.property(fc.jsonValue(), fc.constantFrom(undefined, 1, '\t'), (value, indent) => {
      expect(jsonFaultAt(JSON.stringify(value, null, indent))).toBeNull();
    }),
    { numRuns: 500 },
  );
});

test('2000 texts put together from pieces of JSON have a fault exactly when JSON.parse throws', () => {
  const piece = fc.constantFrom(
    ...['{', '}', '[', ']', ':', ',', ' ', '\n', '"a"', '"', '1', '-0.5e3', '01', '.5', '+1', '1.'],
    ...['true', 'nul', 'null', 'nullx', '"\\n"', '"\\x"', '"\\u00e9"', '"\\u00g9"', '\u00a0', '//'],
  );
  const glued = fc.array(piece, { maxLength: 9 }).map((pieces) => pieces.join(''));
  const cut = fc
    .tuple(fc.json({ depthSize: 'small' }), fc.nat(), fc.nat({ max: 2 }))
    .map(([text, at, count]) => {
      const from = at % (text.length + 1);
      return text.slice(0, from) + text.slice(from + count);
    });
  fc.assert(
    fc.property(fc.oneof(glued, cut), (text) => {
      expect(jsonFaultAt(text) === null).toBe(isJson(text));
    }),
    { numRuns: 2000 },
  );
});

test('a missing comma on line 3 is found on line 3, column 3', () => {
  expect(jsonFaultAt('{\n  "a": 1\n  "b": 2\n}')).toEqual({ line: 3, column: 3, found: '“"”' });
});
