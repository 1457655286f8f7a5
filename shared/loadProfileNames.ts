/** The load profiles of the European Union, smallest first. Source: ecodesignTanks, Annex III Table 1. */
export const loadProfileNames = [
  '3XS',
  'XXS',
  'XS',
  'S',
  'M',
  'L',
  'XL',
  'XXL',
  '3XL',
  '4XL',
] as const;

export type LoadProfileName = (typeof loadProfileNames)[number];
