/**
 * Heat loss of one metre of copper pipe in still air as a trade table prints it, W/m.
 * source: pipeTables
 */
export const bareCopper: readonly (readonly [
  millimetres: number,
  difference: number,
  loss: number,
])[] = [
  [15, 22, 21],
  [15, 38, 32],
  [15, 55, 45],
  [22, 22, 28],
  [22, 38, 43],
  [22, 55, 60],
  [28, 22, 34],
  [28, 38, 53],
  [28, 55, 76],
];

/** The same with 25 mm of insulation of 0.043 W/(m K) at a difference of 55 K; source: pipeTables. */
export const laggedCopper: readonly (readonly [millimetres: number, loss: number])[] = [
  [22, 8],
  [28, 10],
];

/** Primaries of no stated size and temperature, W/m; source: sap, Table 3, read second-hand. */
export const primaries = { bare: 24.5, lagged: 9.1 };

/** 15 mm with water at 60 °C in air at 15 °C, W/m; source: pipeTables, another page. */
export const bare15At45K = 50;
