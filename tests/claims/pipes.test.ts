import { expect } from 'vitest';
import { darcyWeisbach, pipePressureDrop } from '../../sim/closures/pipeFriction.ts';
import { quadraticDrop } from '../../sim/closures/fitting.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import {
  measuresWith,
  recoveryWith,
  runWith,
  sampled,
  type Settings,
} from '../support/houseWith.ts';
import { resultOf, termsOf } from '../support/recordOf.ts';

const coilFlowWith = (settings: Settings) => measuresWith(settings).coilFlow;

/** What the flow has lost on its way to the coil two minutes before the stat is satisfied, when it is steady, K. */
const lostOnTheWay = (settings: Settings) => {
  const run = runWith({ ...settings, 'heating.arrangement': 'hotWaterOnly' });
  const at = (run.measures.recovery ?? Number.NaN) - 120;
  return sampled(run, 'flow', at) - sampled(run, 'coilInlet', at);
};

/** Pressure along 10 m of a bore at 60 °C, Pa. @param flow  m³/s */
const drop = (bore: number, flow: number) => pipePressureDrop(10, bore, 1.5e-6, flow, 983, 4.66e-4);
const litrePerMinute = 1e-3 / 60;

claim('The more a circulator must move, the less pressure it has left to move it with.', () => {
  expectMoves('circulator', { flow: [1e-4, 7.9e-4] }, { flow: 'down' });
});

claim('A higher speed setting, less resistance, a strainer cleaned.', () => {
  expectMoves(
    'circulator',
    { shutOffHead: [1, 8], largestFlow: [9e-4, 2e-3] },
    { shutOffHead: 'up', largestFlow: 'up' },
  );
  expectRising([2, 4, 6].map((head) => coilFlowWith({ 'circulator.shutOffHead': head })));
  expectFalling([0, 50, 300].map((drop) => coilFlowWith({ 'primary.coilBranchDrop': drop })));
});

claim('The most the circulator can lift; a worn or slow one has less.', () => {
  expectRising([0.5, 1, 5].map((head) => coilFlowWith({ 'circulator.shutOffHead': head })));
});

claim('A smaller bore holds less and resists more.', () => {
  expectMoves('tubeContent', { bore: [0.006, 0.05] }, { bore: 'up' });
  for (const flow of [3, 10, 20]) {
    const drops = [0.0108, 0.0136, 0.0202, 0.0262].map((bore) => drop(bore, flow * litrePerMinute));
    expectFalling(drops);
  }
});

claim(
  'Once it is turbulent, twice the flow through the same pipe costs more than three times the pressure.',
  () => {
    for (const bore of [0.0136, 0.0202, 0.0262]) {
      for (const velocity of [0.3, 0.6, 1, 2]) {
        const flow = (velocity * Math.PI * bore * bore) / 4;
        const times = drop(bore, 2 * flow) / drop(bore, flow);
        expect(times).toBeGreaterThan(3);
        expect(times).toBeLessThan(4);
      }
    }
  },
);

claim('A larger bore, a shorter run, less flow.', () => {
  expectMoves(
    'pipePressureDrop',
    { f: [0.01, 0.05], length: [1, 100], bore: [0.008, 0.05], velocity: [0.1, 3] },
    { f: 'up', length: 'up', bore: 'down', velocity: 'up' },
  );
});

claim('The faster the water, the smaller the factor, down to what the roughness leaves.', () => {
  expectMoves(
    'pipeFriction',
    { Re: [4001, 2e5], roughness: [0, 0.01] },
    { Re: 'down', roughness: 'up' },
  );
  const rough = { roughness: 0.01 };
  const last = resultOf('pipeFriction', { ...rough, Re: 1e9 });
  expect(resultOf('pipeFriction', { ...rough, Re: 1e7 }) / last).toBeCloseTo(1, 2); // a hundredth
});

claim('Hardly anything in copper tube, which is smooth; scale in the pipe does.', () => {
  const at = (height: number) => resultOf('pipeFriction', { Re: 3e4, roughness: height / 0.0202 });
  expect(at(1.5e-6) / at(0)).toBeLessThan(1.02);
  expect(at(0.5e-3) / at(0)).toBeGreaterThan(1.8);
});

claim('Pulled bends in place of elbows.', () => {
  expectMoves('equivalentLength', { bore: [0.008, 0.05] }, { bore: 'up' });
  expectRising([0, 10, 40].map((bends) => recoveryWith({ 'primary.bends': bends })));
});

claim('Opening the valve, cleaning the strainer, a larger valve.', () => {
  expectMoves(
    'quadraticDrop',
    { pressure: [1e3, 1e5], flow: [1e-5, 1e-3] },
    { pressure: 'up', flow: 'up' },
  );
  expectFalling([2, 20, 100].map((valve) => coilFlowWith({ 'primary.valveDrop': valve })));
});

claim('Twice the flow, four times the pressure.', () => {
  for (const flow of [1e-5, 1e-4, 1e-3]) {
    const twice = quadraticDrop(1e4, 2.5e-4, 2 * flow) / quadraticDrop(1e4, 2.5e-4, flow);
    expect(twice).toBeCloseTo(4, 12);
  }
});

claim('A long, bare or slow pipe hands the coil cooler water than the boiler sent.', () => {
  expectRising([2, 10, 40].map((length) => lostOnTheWay({ 'primary.length': length })));
  expectRising(
    [30, 13, 0].map((lagging) =>
      lostOnTheWay({ 'primary.length': 20, 'primary.lagging': lagging }),
    ),
  );
  expectFalling(
    [1, 2, 5].map((head) => lostOnTheWay({ 'primary.length': 20, 'circulator.shutOffHead': head })),
  );
});

claim('Lagging, a shorter run, more flow.', () => {
  expectMoves(
    'pipeEnd',
    { inlet: [50, 90], loss: [0.1, 1.5], length: [1, 80], mc: [100, 3000] },
    { inlet: 'up', loss: 'down', length: 'down', mc: 'up' },
  );
});

claim(
  'A bare pipe is held back by the air alone; lagging holds back far more than the air does.',
  () => {
    const k = 0.043;
    for (const outside of [0.015, 0.022, 0.028]) {
      const lagging = Math.log((outside + 2 * 0.025) / outside) / (2 * Math.PI * k);
      const air = 1 / (9 * Math.PI * (outside + 2 * 0.025));
      expect(lagging).toBeGreaterThan(3 * air);
      expect(1 / resultOf('pipeHeatLoss', { outside, k, h: 9 })).toBeCloseTo(lagging + air, 6);
    }
  },
);

claim('Thicker lagging; a shorter run; cooler water.', () => {
  // from 15 mm up: round a thinner pipe the first millimetre of lagging adds surface and saves nothing
  expectMoves(
    'pipeHeatLoss',
    { outside: [0.015, 0.05], lagging: [0.001, 0.06], k: [0.03, 0.05] },
    { lagging: 'down', k: 'up' },
  );
  const lost = (settings: Settings) => runWith(settings).balance.lostByPipes;
  expectRising([2, 10, 30].map((length) => lost({ 'primary.length': length })));
  expectRising(
    [60, 70, 80].map((flow) =>
      lost({ 'boiler.hotWaterFlow': flow, 'stat.setPoint': 50, 'boiler.heatingFlow': flow - 20 }),
    ),
  );
});

claim('The finish of the surface: bright metal radiates least.', () => {
  expectMoves(
    'radiation',
    { emissivity: [0.03, 1], surface: [10, 90] },
    { emissivity: 'up', surface: 'up' },
  );
});

claim('Warm air is thicker than cold air, the other way round from water.', () => {
  expectMoves('airViscosity', { temperature: [-20, 100] }, { temperature: 'up' });
  expectMoves('viscosity', { ratio: [275 / 300, 370 / 300] }, { ratio: 'down' });
});
claim('Nothing an installer can change.', () => {
  expect(termsOf('airViscosity')).toEqual(['temperature']);
});

claim('The same flow through a smaller bore runs faster, loses more pressure and is heard.', () => {
  expectMoves('boreSpeed', { flow: [1e-5, 1e-3], bore: [0.008, 0.05] }, { bore: 'down' });
  expectFalling([0.0136, 0.0202, 0.0262].map((bore) => drop(bore, 2e-4)));
});

claim('A larger bore, or less flow.', () => {
  expectMoves(
    'boreSpeed',
    { flow: [1e-5, 1e-3], bore: [0.008, 0.05] },
    { flow: 'up', bore: 'down' },
  );
});

claim('Use a larger pipe or a lower setting of the circulator.', () => {
  const speed = (settings: Settings) => measuresWith({ ...settings }).primaryVelocity;
  expectFalling(['15', '22', '28'].map((size) => speed({ 'primary.size': size })));
  expectRising([2, 4, 6].map((head) => speed({ 'circulator.shutOffHead': head })));
});

claim('extended: in slow flow a part loses a little more than the square law says', () => {
  // a straight pipe shows it: its factor, and so its drop over the square of the speed, grows as the flow slows
  const factor = (velocity: number) =>
    drop(0.0202, (velocity * Math.PI * 0.0202 ** 2) / 4) /
    darcyWeisbach(1, 10, 0.0202, 983, velocity);
  expectFalling([0.2, 0.5, 1].map(factor));
});
