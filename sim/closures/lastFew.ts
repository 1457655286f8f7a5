/**
 * A maker that keeps the last few things it made: asked again for the same, by `===` on everything given, it hands back what
 * it made before. For what is costly to make, never changes once made, and is asked for run after run.
 * @param most  how many are kept
 */
export function lastFew<Given extends readonly unknown[], Made>(
  most: number,
  make: (...given: Given) => Made,
): (...given: Given) => Made {
  const kept: { readonly given: Given; readonly made: Made }[] = [];
  return (...given) => {
    const place = kept.findIndex((each) => each.given.every((one, index) => one === given[index]));
    const found = place < 0 ? { given, made: make(...given) } : kept[place];
    if (place > 0) kept.splice(place, 1);
    if (place !== 0) kept.unshift(found);
    if (kept.length > most) kept.pop();
    return found.made;
  };
}
