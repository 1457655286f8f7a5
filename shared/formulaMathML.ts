import type { ClosureRecord, Term, TermValues } from './closureRecord.ts';

/**
 * A record's formula as a MathML element, in symbols or with today's numbers in it.
 * @param record  the relation
 * @param values  SI values by term key, the result under `result`; a term without a value keeps its
 *                symbol
 */
export function formulaMathML(record: ClosureRecord, values?: TermValues): string {
  const inner = record.formula.replace(/(<msup>)?\{(\w+)\}/g, (_, power = '', key: string) => {
    const term = key === 'result' ? record.result : record.terms.find((t) => t.key === key);
    if (!term) throw new Error(`formula of ${record.key} names ${key}; expected one of its terms`);
    const value = values?.[key];
    if (value === undefined) return power + term.symbol;
    const quantity = quantityMathML(term, value);
    return power + (power === '' ? quantity : bracketed(quantity));
  });
  return `<math display="block">${inner}</math>`;
}

/**
 * A value of a term with its unit, as MathML.
 * @param term   the quantity
 * @param value  SI
 */
export function quantityMathML(term: Term, value: number): string {
  const number = numberMathML(value * (term.factor ?? 1), term.digits ?? 3);
  const unit = term.unit === '' ? '' : `<mspace width="0.2em"/><mtext>${term.unit}</mtext>`;
  return value < 0
    ? `<mrow><mo>(</mo>${number}${unit}<mo>)</mo></mrow>`
    : `<mrow>${number}${unit}</mrow>`;
}

/** In brackets where a power behind it would seem to belong to its unit or its power of ten alone. */
function bracketed(quantity: string): string {
  const isOne = !quantity.includes('<mtext>') && !quantity.includes('<msup>');
  return isOne || quantity.includes('<mo>(</mo>')
    ? quantity
    : `<mrow><mo>(</mo>${quantity}<mo>)</mo></mrow>`;
}

/** Plain figures between 0.001 and 100 000, powers of ten beyond. */
function numberMathML(shown: number, digits: number): string {
  const size = Math.abs(shown);
  const minus = shown < 0 ? '<mo>−</mo>' : '';
  if (shown === 0) return '<mn>0</mn>';
  if (size >= 1e-3 && size < 1e5) return `${minus}<mn>${Number(size.toPrecision(digits))}</mn>`;
  const [mantissa, exponent] = size.toExponential(digits - 1).split('e');
  const ten = Number(exponent);
  const raised = ten < 0 ? `<mrow><mo>−</mo><mn>${-ten}</mn></mrow>` : `<mn>${ten}</mn>`;
  return `${minus}<mn>${mantissa}</mn><mo>×</mo><msup><mn>10</mn>${raised}</msup>`;
}
