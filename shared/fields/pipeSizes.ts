/** Copper tube as it is sold, by its outside diameter. Source: EN 1057. */
export const pipeSizes = ['8', '10', '12', '15', '22', '28', '35'].map((value) => ({
  value,
  label: `${value} mm`,
}));
