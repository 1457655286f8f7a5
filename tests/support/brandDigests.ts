/**
 * Words born as a brand in this trade, as the first 16 hexadecimal digits of the SHA-256 of the word
 * in small letters, so that the project can keep them out without naming one.
 */
export const brandDigests: ReadonlySet<string> = new Set([
  '0f10d3f13b54b72e',
  '11ed3a747310cf65',
  '120ed1f4810cfd54',
  '162a6d8cf6dc6a66',
  '59c1de0763e8bdc6',
  '608821bcab3c1d76',
  '6c5a40c85db8ed75',
  '7e4029e6a98fbb49',
  '87821673c1e4808f',
  '909b70f5f704f577',
  '9aba70ba1835ee19',
  'b5b3a28793de45e7',
  'b76d18d2ac2a2646',
  'ba5dc2e46a7c3405',
  'c190b2c9cc02f651',
  'caa845eee381e945',
  'ce980bc1da438977',
  'd081c313f2313723',
  'd0f3483d4a343557',
  'da4b1c6bc18858fb',
  'db304be43a75ea07',
]);
