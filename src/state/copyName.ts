/** The name of a copy: the same with the first number from 2 that is free, as in `Family cylinder (2)`. */
export function copyName(name: string, taken: readonly string[]): string {
  const stem = name.replace(/ \(\d+\)$/, '').slice(0, LONGEST_STEM);
  const numbered = (number: number): string => `${stem} (${number})`;
  let number = 2;
  while (taken.includes(numbered(number))) number += 1;
  return numbered(number);
}

const LONGEST_STEM = 110; // so that it fits into a file with its number
