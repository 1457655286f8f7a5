import { describe, expect, test } from 'vitest';
import { plainVariant } from '../../make/plainVariant.ts';
import type { Variant } from '../../../shared/variant.ts';
import { tabulatedWater } from '../../../sim/closures/water.ts';
import {
  conductionRates,
  cylinderStart,
  lowerLayer,
  makeCylinder,
  standingLossRates,
  temperatureAt,
} from '../../../sim/plant/cylinder.ts';
import { drawOffRates, makeInlet } from '../../../sim/plant/drawOff.ts';

const base = plainVariant('cylinder');
const water = tabulatedWater();
const cylinder = makeCylinder(base, water);
const sum = (values: ArrayLike<number>) => Array.from(values).reduce((a, b) => a + b, 0);

/** An invented rising profile of 48 layers, °C. */
const T = Array.from({ length: 48 }, (_, i) => 10 + 50 / (1 + Math.exp((24 - i) / 3)));

describe('a cylinder in layers', () => {
  test('of 1.8 kWh a day loses 75 W at 65 °C in a 20 °C room, whatever the layers', () => {
    for (const layers of [10, 48, 200]) {
      const cut = makeCylinder({ ...base, run: { ...base.run, layers } }, water);
      const net = new Float64Array(layers);
      const lost = standingLossRates(cut, new Array(layers).fill(65), net);
      expect(lost).toBeCloseTo(75, 9); // 1800 Wh over 24 h
      expect(sum(net)).toBeCloseTo(-75, 9);
    }
  });

  test('conducts no heat at one temperature and loses none by conduction at any', () => {
    const even = new Float64Array(48);
    conductionRates(cylinder, new Array(48).fill(40), even);
    expect(even.every((x) => x === 0)).toBe(true);
    const net = new Float64Array(48);
    conductionRates(cylinder, T, net);
    expect(Math.abs(sum(net))).toBeLessThan(1e-9); // W: rounding of some 10 W
    expect(net.some((x) => x > 0.1)).toBe(true);
  });

  test('conducts the same from either end: a mirrored profile gives the mirrored heats', () => {
    const net = new Float64Array(48);
    const mirrored = new Float64Array(48);
    conductionRates(cylinder, T, net);
    conductionRates(cylinder, [...T].reverse(), mirrored);
    for (let i = 0; i < 48; i++) expect(mirrored[47 - i]).toBeCloseTo(net[i], 9);
  });

  test('holds the same heat in 10 layers as in 200', () => {
    const heat = (layers: number) =>
      makeCylinder({ ...base, run: { ...base.run, layers } }, water).layerCapacity * layers;
    expect(heat(10) / heat(200)).toBeCloseTo(1, 12);
    // 210 l at 35 °C: 994.03 kg/m³ × 4179.3 J/(kg K) = 872.4 kJ/K, and some 2 % of steel wall
    expect(heat(48) / (0.21 * 994.0327 * 4179.266)).toBeGreaterThan(1);
    expect(heat(48) / (0.21 * 994.0327 * 4179.266)).toBeLessThan(1.03);
  });

  test('starts 40 % hot as 40 % of the heat, with the boundary 0.1 m or 0 m thick', () => {
    for (const boundary of [0, 0.1]) {
      const variant: Variant = { ...base, start: { hotShare: 0.4, hotTemperature: 60, boundary } };
      const start = cylinderStart(cylinder, variant);
      const share = sum(start.map((t) => (t - 10) / 50)) / 48;
      expect(Math.abs(share - 0.4)).toBeLessThan(0.5 / 48 + 1e-12); // to half a layer
      expect([start[0], start[47]]).toEqual([10, 60]);
    }
  });

  test('reads 44.5 °C a tenth of the way from a layer at 44 °C to one at 49 °C, and the ends beyond', () => {
    const rise = Array.from({ length: 48 }, (_, i) => 4 + 5 * i);
    const centre = 8.5 * cylinder.layerHeight;
    expect(temperatureAt(cylinder, rise, centre + 0.1 * cylinder.layerHeight)).toBeCloseTo(44.5, 9);
    expect(lowerLayer(cylinder, centre + 0.1 * cylinder.layerHeight)).toBe(8);
    expect(temperatureAt(cylinder, rise, 0)).toBe(rise[0]);
    expect(temperatureAt(cylinder, rise, 1.32)).toBe(rise[47]);
  });
});

describe('a draw of 10 l/min', () => {
  const flow = 10 / 60_000;
  const inlet = makeInlet(base, cylinder, water);

  test('lets in all it takes out: shares of the inlet add up to 1 over 50 mm', () => {
    expect(sum(inlet.share)).toBeCloseTo(1, 12);
    expect(inlet.share.filter((x) => x > 0)).toHaveLength(2); // 27.5 mm layers
  });

  test('carries out what the store loses, above the incoming 10 °C', () => {
    const net = new Float64Array(48);
    drawOffRates(cylinder, inlet, flow, T, net);
    expect(sum(net) + flow * cylinder.waterHeat * (T[47] - 10)).toBeCloseTo(0, 8); // rounding of 35 kW
  });

  test('warms nothing and cools nothing in a store at the incoming 10 °C', () => {
    const net = new Float64Array(48);
    drawOffRates(cylinder, inlet, flow, new Array(48).fill(10), net);
    for (const x of net) expect(Math.abs(x)).toBeLessThan(1e-9);
  });
});
