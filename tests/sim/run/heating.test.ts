import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { Quantity, Result } from '../../../shared/result.ts';
import type { Variant } from '../../../shared/variant.ts';
import { outsideAt } from '../../../sim/plant/outside.ts';
import { makePlant } from '../../../sim/plant/plant.ts';
import { simulateToEnd } from '../../../sim/run/simulate.ts';

const base = defaultVariant('heating');
const hour = 3600;

/** A day from midnight on with a store that is hot, so that the rooms have the boiler. */
function heatedDay(
  heating: Partial<Variant['heating']>,
  house: Partial<Variant['house']>,
  boiler: Partial<Variant['boiler']> = {},
): Result {
  return simulateToEnd({
    ...base,
    boiler: { ...base.boiler, ...boiler },
    start: { ...base.start, hotShare: 1 },
    programme: { ...base.programme, startsAt: 0 },
    heating: { ...base.heating, ...heating },
    house: { ...base.house, ...house },
    run: { ...base.run, duration: 24 * hour },
  });
}
const calls = ({ marks }: Result) => marks.filter(({ kind }) => kind === 'heatingCalled').length;
const last = ({ trace }: Result, quantity: Quantity) => trace.of[quantity][trace.samples - 1];

/** Of a quantity from one time to another, trapezium by trapezium. */
function integral({ trace }: Result, quantity: Quantity, from: number, to: number): number {
  const { time, of, samples } = trace;
  let sum = 0;
  for (let i = 1; i < samples; i++) {
    if (time[i - 1] < from || time[i] > to) continue;
    sum += ((time[i] - time[i - 1]) * (of[quantity][i] + of[quantity][i - 1])) / 2;
  }
  return sum;
}

describe('load compensation over 2 K round 20 °C', () => {
  test('at 0 °C outside calls anew 3 times or less in 24 h where a room stat calls 60 times or more', () => {
    const load = heatedDay({ control: 'loadCompensation' }, { outside: 0 });
    expect(calls(load)).toBeLessThanOrEqual(3);
    expect(calls(heatedDay({}, { outside: 0 }))).toBeGreaterThanOrEqual(60);
    for (const air of load.trace.of.air) {
      expect(air).toBeGreaterThan(19.5 - 0.05); // the stat’s differential, and what the radiators bring late
      expect(air).toBeLessThan(20 + 0.05);
    }
  });

  describe('at −3 °C outside', () => {
    const load = heatedDay({ control: 'loadCompensation' }, { outside: -3 });
    const air = last(load, 'air');

    test('calls anew 0 times, lights the burner once, and stands still at 19.70 °C within 2 mK for the last 6 h', () => {
      expect([calls(load), load.measures.burnerStarts]).toEqual([0, 1]);
      const { time, of, samples } = load.trace;
      for (let i = 0; i < samples; i++) {
        if (time[i] > 18 * hour) expect(Math.abs(of.air[i] - air)).toBeLessThan(2e-3);
      }
      expect(air).toBeCloseTo(19.7, 1);
    });

    test('gives the 5898 W that the house loses, at a flow that its curve has for the room', () => {
      // by hand: 100 W/K leave with the air and 150 W/K through the fabric, which the air warms by 3.45 × 4.5 × 90 = 1397.25 W/K
      // and which passes 1 / (1 / 150 − 1 / 1397.25) = 168.04 W/K to outside; 35 % of the radiators’ heat goes straight to it:
      // (1397.25 + 0.35 × 100) / (1397.25 + 0.65 × 168.04) = 0.95075 of the room’s excess is left in the fabric
      const loss = (100 + 168.04 * 0.95075) * (air + 3);
      expect(loss).toBeCloseTo(5898, 0);
      // the fabric follows with 22.5 MJ/K over 1565 W/K, 4 h: e⁻⁶ of a few kelvins is left
      expect(last(load, 'radiatorHeat') / loss).toBeCloseTo(1, 3);
      const u = (21 - air) / 2; // from the top of the band down
      expect(last(load, 'flowTarget')).toBeCloseTo(30 + 30 * u * u * (3 - 2 * u), 9); // rounding
      expect(Math.abs(last(load, 'flow') - last(load, 'flowTarget'))).toBeLessThan(0.1); // integral action
    });
  });
});

describe('weather compensation for 55 °C at −3 °C, on a day of 3 °C with a swing of 5 K', () => {
  const day = heatedDay(
    { control: 'weatherCompensation' },
    { outside: 3, outsideSwing: 5 },
    { heatingFlow: 55 },
  );
  const { time, of, samples } = day.trace;

  /** The curve by hand: 30 K at the design day, exponent 1.3, and half of 10 K between flow and return. */
  const curve = (outside: number) => {
    const share = (20 - outside) / 23;
    return 20 + 30 * share ** (1 / 1.3) + 5 * share;
  };

  test('aims at 53.8 °C in the coldest hour and at 40.8 °C in the warmest, by its curve', () => {
    expect(curve(-2)).toBeCloseTo(53.77, 2);
    expect(curve(8)).toBeCloseTo(40.8, 1);
    const targets = Array.from(of.flowTarget).filter((target) => !Number.isNaN(target));
    expect(Math.max(...targets)).toBeCloseTo(53.77, 1); // samples are minutes apart
    expect(Math.min(...targets)).toBeCloseTo(curve(8), 1);
  });

  test('is lower whenever it is warmer outside: every sample lies on the curve to 1e-9 K', () => {
    let seen = 0;
    for (let i = 0; i < samples; i++) {
      if (Number.isNaN(of.flowTarget[i])) continue;
      expect(Math.abs(of.flowTarget[i] - curve(of.outside[i]))).toBeLessThan(1e-9); // rounding
      seen++;
    }
    expect(seen).toBeGreaterThan(100);
  });

  test('the outside wave is 8 °C at 15:00, −2 °C at 3:00, 3 °C at 9:00 and 3 °C on the mean of the day', () => {
    const { house } = day.variant;
    expect([15, 3, 9].map((hours) => outsideAt(house, hours * hour))).toEqual([
      8,
      -2,
      expect.closeTo(3, 9),
    ]);
    let sum = 0;
    for (let minute = 0; minute < 1440; minute++) sum += outsideAt(house, minute * 60);
    expect(sum / 1440).toBeCloseTo(3, 9); // equal steps over a whole wave: rounding
    // the same from the samples of the run, up to 12 min apart: (12 min / day × 2π)² / 12 of the swing
    expect(integral(day, 'outside', 0, 24 * hour) / (24 * hour)).toBeCloseTo(3, 2);
    expect(outsideAt({ ...house, outsideSwing: 0 }, 15 * hour)).toBe(3);
  });

  test('goes by the time of day: a run that starts at 12:00 has its 8 °C after 3 h', () => {
    const noon = simulateToEnd({
      ...day.variant,
      programme: { ...day.variant.programme, startsAt: 12 * hour },
      run: { ...day.variant.run, duration: 4 * hour },
    });
    const warmest = noon.trace.of.outside.indexOf(Math.max(...noon.trace.of.outside));
    expect(Math.abs(noon.trace.time[warmest] - 3 * hour)).toBeLessThanOrEqual(120); // a sample
    expect(time[of.outside.indexOf(Math.max(...of.outside))]).toBeGreaterThan(14.7 * hour);
  });
});

describe('heat still in the radiators while the cylinder has the boiler', () => {
  const result = simulateToEnd(base);
  const { trace, phases } = result;
  const from = phases.find(({ coilRuns }) => coilRuns)?.from ?? Number.NaN;
  const to = result.measures.recovery ?? Number.NaN;
  const inPause = (i: number) => trace.time[i] >= from && trace.time[i] <= to;
  const inside = Array.from(trace.time.keys()).filter(inPause).slice(1, -1);

  test('the valve leaves the radiators at 20 s, and they have 0 l/min until the stat is satisfied after 35 min', () => {
    expect(from).toBe(20);
    expect(to / 60).toBeCloseTo(35, 0);
    expect(inside.length).toBeGreaterThan(30);
    for (const i of inside) expect(trace.of.radiatorFlow[i]).toBe(0);
  });

  test('is given on: above 1 kW and falling from sample to sample for 15 min', () => {
    for (let n = 1; n < inside.length; n++) {
      if (trace.time[inside[n]] === trace.time[inside[n - 1]]) continue; // something switched
      const now = trace.of.radiatorHeat[inside[n]];
      expect(now).toBeLessThan(trace.of.radiatorHeat[inside[n - 1]]);
      if (trace.time[inside[n]] < from + 15 * 60) expect(now).toBeGreaterThan(1000);
    }
  });

  test('adds up to capacity × fall, 80 l of 4.13 kJ/(l K), within 1 %', () => {
    const { capacity } = makePlant(base).radiators;
    expect(capacity / 80_000).toBeCloseTo(4.13, 2); // 988.0 kg/m³ × 4181 J/(kg K) at 50 °C
    const [first, end] = [inside[0], inside[inside.length - 1]];
    const fall = trace.of.radiator[first] - trace.of.radiator[end];
    const given = integral(result, 'radiatorHeat', trace.time[first], trace.time[end]);
    expect(fall).toBeGreaterThan(5);
    expect(Math.abs(given / (capacity * fall) - 1)).toBeLessThan(0.01);
  });
});

describe('pump overrun after the last call', () => {
  const alone = (postRun: number) =>
    simulateToEnd({
      ...base,
      boiler: { ...base.boiler, postRun },
      heating: { ...base.heating, arrangement: 'hotWaterOnly' },
    });
  const [short, long] = [alone(0), alone(600)];

  test('of 10 min brings heat of the boiler into the store while 0 W are burnt, and then everything stops', () => {
    const over = long.phases.find(({ limit }) => limit === 'overrun');
    if (!over) throw new Error('no overrun; expected one');
    expect(over.to - over.from).toBeCloseTo(600, 6); // rounding of the clock
    expect(over.coilRuns).toBe(true);
    const { time, of, samples } = long.trace;
    for (let i = 1; i + 1 < samples; i++) {
      if (time[i] <= over.from || time[i] >= over.to) continue;
      expect(of.fuel[i]).toBe(0);
      expect(of.coilFlow[i]).toBeGreaterThan(0);
    }
    expect(integral(long, 'coilHeat', over.from, over.from + 120)).toBeGreaterThan(1e5);
    expect(long.phases.at(-1)).toMatchObject({ limit: 'off', coilRuns: false });
  });

  test('leaves the burner’s heat as without it, to 1e-9, and 0.1 kWh or more of it in the store instead of in the boiler', () => {
    expect(long.measures.recovery).toBe(short.measures.recovery);
    expect(long.balance.fromBoiler / short.balance.fromBoiler).toBeCloseTo(1, 9);
    const more = long.balance.gainedByStore - short.balance.gainedByStore;
    const less = short.balance.gainedByPrimary - long.balance.gainedByPrimary;
    expect(more).toBeGreaterThan(0.1 * 3.6e6);
    expect(less).toBeGreaterThan(0.05 * 3.6e6);
    // what else: less is lost by a boiler and pipes that are cooler
    const lost = ({ balance }: Result) => balance.lostByPipes + balance.lostByCylinder;
    expect(lost(short)).toBeGreaterThan(lost(long));
    expect(more - less).toBeCloseTo(lost(short) - lost(long), -1); // of some 10 MJ: rounding
  });

  test('of 2 min after heating goes through the radiators: 0 l/min through the coil', () => {
    const rooms = simulateToEnd({ ...base, start: { ...base.start, hotShare: 1 } });
    const over = rooms.phases.filter(({ limit }) => limit === 'overrun');
    expect(over.length).toBeGreaterThan(0);
    for (const phase of over) {
      expect([phase.coilRuns, phase.radiatorsRun]).toEqual([false, true]);
      expect(phase.to - phase.from).toBeLessThanOrEqual(120 + 1e-6);
    }
  });
});
