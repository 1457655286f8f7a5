/**
 * Where names stand so that none overlaps another and none leaves the frame: as near to their lines
 * as that allows, in the order of their lines. Pixels downwards, in the order given.
 * @param wishes  centre each name would like
 * @param height  of a line of text, pixels
 * @param top     first pixel of the frame
 * @param bottom  last pixel of the frame
 */
export function spread(
  wishes: readonly number[],
  height: number,
  top: number,
  bottom: number,
): number[] {
  const order = wishes.map((_, index) => index).sort((one, other) => wishes[one] - wishes[other]);
  const groups: { members: number[]; centre: number }[] = [];
  const least = top + height / 2;
  const most = bottom - height / 2;
  const settle = (group: { members: number[]; centre: number }) => {
    const mean = group.members.reduce((sum, index) => sum + wishes[index], 0);
    const half = ((group.members.length - 1) * height) / 2;
    const centre = mean / group.members.length;
    group.centre = Math.max(least + half, Math.min(most - half, centre));
  };
  for (const index of order) {
    groups.push({ members: [index], centre: 0 });
    settle(groups[groups.length - 1]);
    // a group that touches the one above joins it
    while (groups.length > 1) {
      const [upper, lower] = groups.slice(-2);
      const gap = ((upper.members.length + lower.members.length) * height) / 2;
      if (lower.centre - upper.centre >= gap - 1e-9) break;
      upper.members.push(...lower.members);
      groups.pop();
      settle(upper);
    }
  }
  const places = new Array<number>(wishes.length);
  for (const { members, centre } of groups) {
    members.forEach((index, place) => {
      places[index] = centre + (place - (members.length - 1) / 2) * height;
    });
  }
  return places;
}

/** Where the names at the ends of the lines of a frame stand, 15 pixels apart where text is 12 pixels. */
export function endPlaces(
  labels: readonly { readonly y: number }[],
  frame: { readonly top: number; readonly bottom: number },
  size = 12,
): number[] {
  return spread(
    labels.map((label) => label.y),
    1.25 * size,
    frame.top - size / 2,
    frame.bottom + size / 2,
  );
}

/** Width of a line of text set at 12 px, pixels; on the safe side, as no layout is read. */
export const textWidth = (text: string, size = 12): number => text.length * size * 0.54;
