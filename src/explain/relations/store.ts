import type { ClosureRecord } from '../../../shared/closureRecord.ts';
import { equals, frac, mi, mo, paren, row, sub } from '../../../shared/mathml.ts';
import { mixedShare } from '../../../sim/closures/mixedLitres.ts';
import { asResult, heatCapacity, power, volume } from './terms.ts';

/** Usable litres: the hot part times what each of its litres makes at the tap. */
export const usableLitres: ClosureRecord = {
  key: 'usableLitres',
  title: 'Usable litres at 40 °C',
  result: { ...asResult(volume), symbol: sub('V', '40'), name: 'usable at 40 °C' },
  terms: [
    { ...volume, key: 'hotVolume', symbol: sub('V', 'hot'), name: 'water at 40 °C or above' },
    { key: 'hot', symbol: sub('T', 'hot'), name: 'its mean temperature', unit: '°C' },
    { key: 'cold', symbol: sub('T', 'c'), name: 'incoming cold', unit: '°C' },
    { key: 'mixed', symbol: sub('T', 'm'), name: 'at the tap', unit: '°C' },
  ],
  formula: equals(
    '{result}',
    '{hotVolume}',
    mo('×'),
    frac(row('{hot}', mo('−'), '{cold}'), row('{mixed}', mo('−'), '{cold}')),
  ),
  sentence: 'Each litre that is hot enough goes further the hotter it is; the rest does not count.',
  source: 'ecodesignTanks',
  where: 'Annex I, definition of V40, counted layer by layer',
  range: 'hot part at 40 °C or above',
  outside: 'layers below 40 °C count nothing',
  changes: 'A hotter store, warmer incoming water; at the next call, a lower sensor.',
  example: {
    given: { hotVolume: 0.21, hot: 60, cold: 10, mixed: 40 },
    gives: 0.35,
    digits: 9,
    note: 'Worked by hand: 210 l × 50 / 30.',
  },
  compute: ({ hotVolume, hot, cold, mixed }) => hotVolume * mixedShare(hot, cold, mixed),
};

/** How fast the water that moves as one warms. */
export const risePerMinute: ClosureRecord = {
  key: 'risePerMinute',
  title: 'How fast the water above the coil warms',
  result: {
    key: 'result',
    symbol: frac(mi('ΔT'), mi('Δt')),
    name: 'rise',
    unit: 'K/min',
    factor: 60,
  },
  terms: [
    { ...power, name: 'the coil passes' },
    { ...volume, name: 'water that moves as one' },
    heatCapacity,
  ],
  formula: equals('{result}', frac('{power}', row('{volume}', mo('·'), '{capacity}'))),
  sentence:
    'Warm water rises and stirs everything above it to one temperature, so one body of water warms together.',
  source: 'isotonic',
  where:
    'layers within 0.5 K of the top are counted as one here; heat losses are left out of this line',
  range: 'while the coil runs',
  outside: 'without the coil only losses and draw-off move it',
  changes: 'More coil output, or less water above the coil.',
  example: {
    given: { power: 14_000, volume: 0.2, capacity: 4.2e6 },
    gives: 1 / 60,
    digits: 9,
    note: 'Worked by hand: 14 kW into 200 l at 4.2 kJ/(l K) is 1 K a minute.',
  },
  compute: ({ power: given, volume: water, capacity }) => given / (water * capacity),
};

/** Water that is still cold. */
export const coldLeft: ClosureRecord = {
  key: 'coldLeft',
  title: 'Water still below 40 °C',
  result: { ...asResult(volume), symbol: sub('V', 'cold'), name: 'below 40 °C' },
  terms: [
    { ...volume, name: 'water in the store' },
    { ...volume, key: 'hotVolume', symbol: sub('V', 'hot'), name: 'water at 40 °C or above' },
  ],
  formula: equals('{result}', '{volume}', mo('−'), '{hotVolume}'),
  sentence: 'What is not hot is cold: mostly the water below the coil, which nothing stirs.',
  source: 'lumpedHeat',
  where: 'counted layer by layer',
  range: 'any store',
  outside: 'no limits',
  changes: 'A coil nearer the base leaves less.',
  example: {
    given: { volume: 0.21, hotVolume: 0.2 },
    gives: 0.01,
    digits: 9,
    note: 'Worked by hand: 210 l less 200 l.',
  },
  compute: ({ volume: all, hotVolume }) => all - hotVolume,
};

/** Heat the cylinder loses to the air around it. */
export const cylinderLoss: ClosureRecord = {
  key: 'cylinderLoss',
  title: 'What the cylinder loses',
  result: { key: 'result', symbol: sub('Q', 'loss'), name: 'the cylinder loses', unit: 'W' },
  terms: [
    { key: 'UA', symbol: sub('UA', 'loss'), name: 'loss per kelvin', unit: 'W/K' },
    { key: 'store', symbol: sub('T', 'mean'), name: 'mean over the store’s surface', unit: '°C' },
    { key: 'air', symbol: sub('T', 'air'), name: 'air around it', unit: '°C' },
  ],
  formula: equals('{result}', '{UA}', mo('×'), paren('{store}', mo('−'), '{air}')),
  sentence: 'The loss per kelvin, times how much warmer the store is than its surroundings.',
  source: 'en12897',
  where: 'tested at 45 K; taken as proportional to the difference',
  range: 'store warmer than the air',
  outside: 'a store colder than the air gains heat',
  changes: 'Insulation, lagged connections, a cooler store.',
  example: {
    given: { UA: 75 / 45, store: 65, air: 20 },
    gives: 75,
    digits: 9,
    note: 'Worked by hand: 75 W at the 45 K of its test.',
  },
  compute: ({ UA, store, air }) => UA * (store - air),
};
