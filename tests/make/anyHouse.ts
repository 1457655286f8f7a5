import fc from 'fast-check';
import { arrangements } from '../../shared/arrangements.ts';
import { defaultVariant } from '../../shared/fields.ts';
import type { Variant } from '../../shared/variant.ts';

/** In a hundred steps: nothing finer could be typed. */
const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 100 }).map((step) => min + ((max - min) * step) / 100);
/** Nothing for one in three. */
const perhaps = (most: number) => fc.oneof(fc.constant(0), between(0, most), between(0, most));

/**
 * Invented houses that mostly get their hot water within 4 h, with any of the causes there are: the healthy house with each
 * setting that matters somewhere near what is usual. 10 layers, for speed.
 */
export const anyHouse: fc.Arbitrary<Variant> = fc
  .record({
    boiler: fc.record({
      model: fc.constantFrom<Variant['boiler']['model']>('asBuilt', 'asBuilt', 'asBuilt', 'ideal'),
      output: between(9000, 35_000),
      minimumOutput: between(1000, 9000),
      hotWaterFlow: between(68, 85),
      waterContent: between(0.002, 0.015),
      minimumOff: perhaps(600),
    }),
    primary: fc.record({
      size: fc.constantFrom<Variant['primary']['size']>('15', '22', '28'),
      length: perhaps(30),
      lagging: perhaps(0.025),
      valveTravel: perhaps(60),
      coilBranchDrop: perhaps(50_000),
    }),
    coil: fc.record({ length: between(5, 14), scaleThickness: perhaps(0.0015) }),
    stat: fc.record({
      sensorHeight: between(0.15, 0.7),
      mounting: fc.constantFrom<Variant['stat']['mounting']>(
        ...(['wetPocket', 'dryPocket', 'strappedLagged', 'strappedBare'] as const),
      ),
      differential: between(2, 15),
    }),
    arrangement: fc.constantFrom(...(Object.keys(arrangements) as (keyof typeof arrangements)[])),
    hotWater: fc.constantFrom<Variant['programme']['hotWater']>('always', 'timed'),
    used: fc.constantFrom<Variant['immersion']['used']>('no', 'no', 'withBoiler'),
    hotShare: perhaps(0.5),
    draw: fc.record({ volume: perhaps(0.1), startsAt: between(0, 900) }),
    outside: between(-3, 10),
  })
  .map(({ arrangement, hotWater, used, hotShare, outside, ...part }) => {
    const base = defaultVariant('any house');
    return {
      ...base,
      boiler: { ...base.boiler, ...part.boiler },
      primary: { ...base.primary, ...part.primary },
      coil: { ...base.coil, ...part.coil },
      stat: { ...base.stat, ...part.stat },
      draw: { ...base.draw, ...part.draw },
      heating: { ...base.heating, arrangement },
      house: { ...base.house, outside },
      programme: { ...base.programme, hotWater, hotWaterAgainFrom: 7.5 * 3600 },
      immersion: { ...base.immersion, used },
      start: { ...base.start, hotShare },
      run: { ...base.run, duration: 4 * 3600, layers: 10 },
    };
  });
