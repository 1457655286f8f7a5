import { describe, expect, test } from 'vitest';
import { columnConductivity, layerConductance } from '../../../sim/closures/conduction.ts';
import { effectiveness, outletTemperature } from '../../../sim/closures/exchange.ts';
import { PIPE_LOSSES, pipeEnd } from '../../../sim/closures/pipeLoss.ts';
import { radiatorOutput } from '../../../sim/closures/radiator.ts';
import { scaleResistance, SCALE_CONDUCTIVITY } from '../../../sim/closures/scale.ts';
import {
  classBound,
  type EnergyClass,
  guideLimit,
  lossConductance,
} from '../../../sim/closures/standingLoss.ts';
import { tubeWall, TUBE_METALS } from '../../../sim/closures/tubeWall.ts';
import { streamThroughLayers } from '../../reference/exact.ts';

const KWH = 3.6e6; // J

describe('exchange', () => {
  test('0.25 kg/s through 800 W/K in five layers leaves at 57.288970 °C, entering at the bottom', () => {
    const mc = 0.25 * 4180;
    let T = 80;
    for (const layer of [15, 20, 30, 45, 60]) T = outletTemperature(T, layer, 800 / 5, mc);
    expect(T).toBeCloseTo(57.28897, 6); // closed form, printed to 1e-6 °C
    // rounding only
    expect(T).toBeCloseTo(streamThroughLayers([15, 20, 30, 45, 60], 80, 800, mc).outlet, 12);
  });

  test('no conductance exchanges nothing, no flow everything, and a tiny conductance keeps its figures', () => {
    expect(effectiveness(0, 1000)).toBe(0);
    expect(effectiveness(800, 0)).toBe(1);
    expect(effectiveness(0, 0)).toBe(0);
    expect(outletTemperature(80, 20, 800, 0)).toBe(20);
    // first order; the next term is 5e-13
    expect(effectiveness(1e-9, 1000) / 1e-12).toBeCloseTo(1, 9);
  });

  test('a tank at 60 °C warms a stream at 20 °C and never past 60 °C', () => {
    expect(outletTemperature(20, 60, 1e6, 100)).toBeCloseTo(60, 12); // NTU 10 000
    expect(outletTemperature(20, 60, 100, 1000)).toBeGreaterThan(20);
  });
});

describe('walls and scale', () => {
  test('1 mm of scale at 2.2 W/(m K) is 4.5e-4 m² K/W and takes a coil of 1000 W/(m² K) down to 688', () => {
    const R = scaleResistance(0.001, SCALE_CONDUCTIVITY);
    expect(R).toBeCloseTo(4.5e-4, 5); // printed to 2 figures
    expect(1 / (1 / 1000 + R)).toBeCloseTo(687.5, 9); // 1 / (0.001 + 1 / 2200), printed as 688
  });

  test('a 22 / 20.4 mm wall is a flat wall of 0.8 mm within 4 %, and stainless steel holds back 21 times as much', () => {
    const copper = tubeWall(0.022, 0.0204, TUBE_METALS.copper);
    // t / d is 0.036
    expect(Math.abs(copper / (0.0008 / TUBE_METALS.copper) - 1)).toBeLessThan(0.04);
    const ratio = tubeWall(0.022, 0.0204, TUBE_METALS.stainlessSteel) / copper;
    expect(ratio).toBeCloseTo(TUBE_METALS.copper / TUBE_METALS.stainlessSteel, 12); // rounding only
  });

  test.each([
    ['copper', 390, 0.0009, 4.64],
    ['stainless steel', 16, 0.0009, 0.79],
    ['carbon steel', 50, 0.0025, 2.06],
  ])(
    'a 350 mm column in %s of %f W/(m K) and %f m conducts %f W/(m K)',
    (_, k, thickness, printed) => {
      // water taken as 0.63 here
      expect(columnConductivity(0.63, 0.35, k, thickness)).toBeCloseTo(printed, 1);
    },
  );

  test('two layers 30 mm apart in a 450 mm cylinder without a wall conduct k π D² / 4 / 0.03', () => {
    // 0.6 × 0.1590431 / 0.03
    expect(layerConductance(0.6, 0.45, 0, 0.001, 0.03)).toBeCloseTo(3.1809, 4);
  });
});

describe('standing loss', () => {
  test('1.8 kWh in 24 h at 45 K is 75 W or 1.667 W/K', () => {
    expect(lossConductance(1.8 * KWH)).toBeCloseTo(75 / 45, 12); // exact
    expect(lossConductance(1.8 * KWH, 55)).toBeCloseTo(75 / 55, 12);
  });

  test.each([
    [100, 1494],
    [120, 1657],
    [150, 1886],
    [180, 2100],
    [210, 2302],
    [250, 2558],
    [300, 2858],
  ])('the guides allow %i l to lose %i Wh in 24 h', (litres, printed) => {
    expect(guideLimit(litres / 1000) / 3600).toBeCloseTo(printed, 0); // printed to 0.001 kWh
  });

  const bounds: [EnergyClass, number[]][] = [
    ['A+', [26.9, 28.9, 30.7, 32.3, 34.3, 36.4, 43.5]],
    ['A', [37.3, 40.0, 42.4, 44.6, 47.2, 50.1, 59.5]],
    ['B', [52.2, 56.0, 59.3, 62.3, 66.0, 70.1, 83.2]],
    ['C', [73.2, 78.5, 83.1, 87.4, 92.5, 98.2, 116.7]],
    ['D', [91.1, 97.7, 103.5, 108.7, 115.0, 122.1, 145.1]],
    ['E', [118.7, 127.4, 135.0, 142.0, 150.3, 159.8, 190.1]],
    ['F', [144.1, 154.6, 164.0, 172.4, 182.7, 194.1, 231.1]],
  ];

  test.each(bounds)(
    'class %s ends at the tabled watts from 120 to 500 l',
    (energyClass, printed) => {
      [120, 150, 180, 210, 250, 300, 500].forEach((litres, i) => {
        // printed to 0.1 W
        expect(classBound(energyClass, litres / 1000)).toBeCloseTo(printed[i], 1);
      });
    },
  );
});

describe('radiators and pipes', () => {
  test.each([
    [20, 0.304],
    [25, 0.406],
    [30, 0.515],
    [35, 0.629],
    [40, 0.748],
    [45, 0.872],
    [50, 1],
    [60, 1.267],
  ])('a radiator %i K above the room gives %f of its rated heat', (excess, factor) => {
    expect(radiatorOutput(1, excess)).toBeCloseTo(factor, 3); // printed to 0.001
  });

  test('a radiator at or below room temperature gives nothing', () => {
    expect(radiatorOutput(1000, 0)).toBe(0);
    expect(radiatorOutput(1000, -10)).toBe(0);
  });

  test('20 m of pipe at 1 W/(m K) take 80 °C water at 1000 W/K down by 1.19 K; without flow the end is at 20 °C', () => {
    expect(pipeEnd(80, 20, 1, 20, 1000)).toBeCloseTo(78.8119, 4); // 20 + 60 × 0.9801987
    expect(pipeEnd(80, 20, 1, 20, 0)).toBe(20);
    // Two pipes end to end are one long pipe; rounding only
    const middle = pipeEnd(80, 20, 1, 8, 1000);
    expect(pipeEnd(middle, 20, 1, 12, 1000)).toBeCloseTo(pipeEnd(80, 20, 1, 20, 1000), 12);
  });

  test('published losses grow with the pipe, and 25 mm of insulation leaves less than a fifth', () => {
    const bare = PIPE_LOSSES.filter((p) => !p.lagged);
    expect(bare.map((p) => p.loss)).toEqual(bare.map((p) => p.loss).sort((a, b) => a - b));
    for (const lagged of PIPE_LOSSES.filter((p) => p.lagged)) {
      const same = bare.find((p) => p.outsideMillimetres === lagged.outsideMillimetres);
      expect(lagged.loss).toBeLessThan(0.2 * (same?.loss ?? 0));
    }
  });
});
