/**
 * Water at the mixed temperature that one part of hot water makes with cold, as a share of the hot
 * volume, pure number. Nothing below the mixed temperature counts, as in the definition of V40:
 * heat counts only above 40 °C at the outlet.
 * @param hot    at the outlet, °C
 * @param cold   incoming, °C, below `mixed`
 * @param mixed  °C
 */
export function mixedShare(hot: number, cold: number, mixed = MIXED): number {
  return hot >= mixed ? (hot - cold) / (mixed - cold) : 0;
}

/** Temperature of the mixed water in which the EU regulation counts litres, °C. */
export const MIXED = 40; // source: ecodesignTanks, Annex I, definition of V40

/** Incoming cold water of the harmonised tests, °C. */
export const TEST_COLD = 10; // source: ecodesignTanks, from memory
