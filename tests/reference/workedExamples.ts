/** Worked examples as printed by others. Plain arithmetic of energy, not measurements. */

/** Heat to warm water, with the specific heat the author used. */
export interface HeatExample {
  readonly source: string;
  readonly litres: number;
  readonly from: number; // °C
  readonly to: number; // °C
  readonly specificHeat: number; // J/(kg K)
  readonly kilowattHours: number;
  readonly rounding: number; // kWh, half the last printed digit
  /** Time at a power, when one is printed. */
  readonly timed?: {
    readonly kilowatts: number;
    readonly hours: number;
    readonly rounding: number;
  };
}

export const heatExamples: readonly HeatExample[] = [
  {
    source: 'cityGuilds, Book 1, page 184: 20 930 kJ, 5.81 kW for one hour',
    litres: 100,
    from: 30,
    to: 80,
    specificHeat: 4186,
    kilowattHours: 20_930 / 3600,
    rounding: 0.5 / 3600,
    timed: { kilowatts: 5.81, hours: 1, rounding: 0.001 }, // 5.81 is rounded to 0.1 %
  },
  {
    source: 'textbookExamples',
    litres: 20,
    from: 20,
    to: 100,
    specificHeat: 4200,
    kilowattHours: 1.867,
    rounding: 0.0005,
    timed: { kilowatts: 3.6, hours: 0.52, rounding: 0.005 },
  },
  {
    source: 'textbookExamples',
    litres: 10,
    from: 25,
    to: 70,
    specificHeat: 4200,
    kilowattHours: 0.525,
    rounding: 0.0005,
    timed: { kilowatts: 4.5, hours: 0.12, rounding: 0.005 },
  },
  {
    source: 'textbookExamples, 1.163 Wh/(kg K)',
    litres: 80,
    from: 10,
    to: 45,
    specificHeat: 4186.8,
    kilowattHours: 3.256,
    rounding: 0.0005,
  },
  {
    source: 'textbookExamples, 1.163 Wh/(kg K)',
    litres: 160,
    from: 10,
    to: 45,
    specificHeat: 4186.8,
    kilowattHours: 6.51,
    rounding: 0.005,
  },
  {
    source: 'textbookExamples, 1.163 Wh/(kg K)',
    litres: 100,
    from: 10,
    to: 60,
    specificHeat: 4186.8,
    kilowattHours: 5.815,
    rounding: 0.0005,
  },
];

/**
 * Minutes from 10 to 50 °C. source: heatUpTable, four of its six rows, computed by its author with
 * 4.2 kJ/(kg K)
 */
export const heatUpMinutes = {
  kilowatts: [3, 5, 7, 10, 12, 14, 16],
  rows: [
    { litres: 50, minutes: [47, 28, 20, 14, 12, 10, 9] },
    { litres: 100, minutes: [94, 56, 40, 28, 24, 20, 18] },
    { litres: 150, minutes: [140, 84, 60, 42, 36, 30, 27] },
    { litres: 250, minutes: [233, 140, 100, 70, 60, 50, 45] },
  ],
} as const;

/** Hot water in a mixture. source: textbookExamples */
export const mixtures = [
  { total: 191, mixed: 36, hot: 49, cold: 13, hotPart: 122, rounding: 0.5 },
  // 1166.7 is printed as 1166: cut off, not rounded
  { total: 3500, mixed: 40, hot: 100, cold: 10, hotPart: 1166, rounding: 1 },
] as const;

/** A store stirred. source: textbookExamples */
export const stirred = {
  hot: { litres: 250, temperature: 80 },
  cold: { litres: 750, temperature: 20 },
  mixed: 35,
} as const;

/** Volume of a cylinder. source: cityGuilds, Book 1, page 382, with 3.142 for pi */
export const volumeExample = {
  millimetres: 500,
  height: 1000,
  litres: 196.375,
  piThousandths: 3142,
} as const;
