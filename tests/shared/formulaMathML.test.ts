import { describe, expect, test } from 'vitest';
import type { ClosureRecord, Term } from '../../shared/closureRecord.ts';
import { formulaMathML, quantityMathML } from '../../shared/formulaMathML.ts';
import { mn, mo, raised, row } from '../../shared/mathml.ts';
import { heatUpTimeRecord } from '../../sim/closures/storedHeat.ts';

const litres: Term = { key: 'V', symbol: '<mi>V</mi>', name: 'volume', unit: 'l', factor: 1000 };
const pure: Term = { key: 'Ra', symbol: '<mi>Ra</mi>', name: 'Rayleigh number', unit: '' };

describe('a quantity in a formula', () => {
  test('0.2104 m³ is shown as 210 l', () => {
    expect(quantityMathML(litres, 0.2104)).toBe(
      '<mrow><mn>210</mn><mspace width="0.2em"/><mtext>l</mtext></mrow>',
    );
  });

  test('4 217 000 is shown as 4.22 × 10⁶ and 0.00045 as 4.50 × 10⁻⁴', () => {
    expect(quantityMathML(pure, 4.217e6)).toContain(
      '<mn>4.22</mn><mo>×</mo><msup><mn>10</mn><mn>6</mn>',
    );
    expect(quantityMathML(pure, 4.5e-4)).toContain('<mn>4.50</mn>');
    expect(quantityMathML(pure, 4.5e-4)).toContain('<mrow><mo>−</mo><mn>4</mn></mrow>');
  });

  test('−3 stands in brackets and 0 stays 0', () => {
    expect(quantityMathML(pure, -3)).toContain('<mo>(</mo><mo>−</mo><mn>3</mn><mo>)</mo>');
    expect(quantityMathML(pure, 0)).toBe('<mrow><mn>0</mn></mrow>');
  });
});

test('a formula shows numbers for the terms that have one and symbols for the rest', () => {
  const markup = formulaMathML(heatUpTimeRecord, { volume: 0.15, power: 7000 });
  expect(markup).toContain('<mn>150</mn>');
  expect(markup).toContain('<mn>7</mn>');
  expect(markup).toContain('<mi>ΔT</mi>');
  expect(markup).toContain('<mi class="letter">t</mi>');
});

test('the base of a power stands in brackets with its unit or its power of ten, a plain number without', () => {
  const { result } = heatUpTimeRecord;
  const powers: ClosureRecord = {
    ...heatUpTimeRecord,
    result,
    terms: [litres, pure],
    formula: row(raised('{V}', mn(2)), mo('·'), raised('{Ra}', mn(3))),
  };
  expect(formulaMathML(powers)).not.toContain('(');
  const small = formulaMathML(powers, { V: 0.15, Ra: 7 });
  expect(small).toContain('<msup><mrow><mo>(</mo><mrow><mn>150</mn>');
  expect(small).toContain('<msup><mrow><mn>7</mn></mrow><mn>3</mn></msup>');
  expect(formulaMathML(powers, { Ra: 9.14e6 })).toContain(
    '<msup><mrow><mo>(</mo><mrow><mn>9.14</mn>',
  );
  // one pair is enough
  expect(formulaMathML(powers, { Ra: -3 }).match(/<mo>\(<\/mo>/g)).toHaveLength(1);
});

test('a formula that names a term it does not have is a fault that says which', () => {
  const broken: ClosureRecord = { ...heatUpTimeRecord, formula: '<mrow>{depth}</mrow>' };
  expect(() => formulaMathML(broken)).toThrow('formula of heatUpTime names depth');
});
