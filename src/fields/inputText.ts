import type { NumberField } from '../../shared/fields.ts';
import type { Limits } from '../../shared/problems/ranges.ts';
import { fromSI, toSI } from '../../shared/units.ts';

/** A setting as it stands in its text field: at least as many decimals as its step. @param value  SI */
export function inputText(value: number, field: NumberField): string {
  const number = fromSI(value, field.unit);
  const text = String(number);
  const decimals = Math.max(decimalsOf(text), decimalsOf(String(field.step)));
  return number.toFixed(Math.min(decimals, 6)).replace('-', '−');
}

/**
 * The setting some steps further, kept within its limits, SI.
 * @param value   SI
 * @param steps   negative to go down
 * @param limits  in the shown unit
 */
export function stepped(
  value: number,
  field: NumberField,
  steps: number,
  { least, most }: Limits,
): number {
  const next = Number((fromSI(value, field.unit) + steps * field.step).toPrecision(12));
  return toSI(Math.min(most, Math.max(least, next)), field.unit);
}

const decimalsOf = (text: string): number => text.split('.')[1]?.length ?? 0;
