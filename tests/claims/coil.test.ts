import { describe, expect } from 'vitest';
import { coilInside } from '../../sim/closures/coilInside.ts';
import { coilPressureDrop } from '../../sim/closures/coilPressureDrop.ts';
import { tabulatedWater } from '../../sim/closures/water.ts';
import { claim } from '../support/claim.ts';
import { expectMoves } from '../support/expectMoves.ts';
import { expectFalling, expectRising } from '../support/expectOrder.ts';
import { recoveryWith } from '../support/houseWith.ts';
import { resultOf } from '../support/recordOf.ts';

const water = tabulatedWater();
const bores = [0.0136, 0.0202, 0.0262];
const turns = [0.6, 0.35, 0.25]; // ever tighter
const massFlow = 0.2; // kg/s, 12 l/min

/** Film inside a coil, W/(m² K). */
const inside = (bore: number, coilDiameter: number, flow: number) =>
  coilInside(water, { insideDiameter: bore, coilDiameter, insideEnhancement: 1 }, flow, 70);

/** Pressure lost in a coil at 60 °C, Pa. @param flow  m³/s */
const drop = (bore: number, coilDiameter: number, length: number, flow: number) =>
  coilPressureDrop({ bore, coilDiameter, length }, flow, 983, 4.66e-4);

describe('what the primary gives up', () => {
  claim(
    'Of the heat it could give at most, the primary gives a share that grows with coil conductance and falls with flow.',
    () => {
      expectMoves('exchange', { UA: [50, 2000], mc: [200, 4000] }, { UA: 'up', mc: 'down' });
    },
  );

  claim(
    'A larger or cleaner coil raises the share; more flow lowers the share but raises the heat.',
    () => {
      expectMoves('exchange', { UA: [50, 2000], mc: [200, 4000] }, { UA: 'up', mc: 'down' });
      for (const UA of [50, 800, 2000]) {
        expectRising([200, 500, 1000, 4000].map((mc) => mc * resultOf('exchange', { UA, mc })));
      }
    },
  );
});

describe('inside the tube', () => {
  claim('Curved flow stays laminar to a higher flow rate than flow in a straight tube.', () => {
    expect(resultOf('criticalReynolds', { curvature: 0.01 })).toBeGreaterThan(2 * 2300);
  });

  claim('A tighter coil turns turbulent later.', () => {
    expectMoves('criticalReynolds', { curvature: [0.01, 0.2] }, { curvature: 'up' });
  });

  claim('A tighter coil stirs more.', () => {
    expectMoves(
      'coilFriction',
      { Re: [2.2e4, 1.5e5], curvature: [0.01, 0.2] },
      { curvature: 'up' },
    );
    expectRising(turns.map((across) => inside(0.0202, across, massFlow)));
  });

  claim(
    'Across the turns, centre to centre; a tighter coil stirs the water inside it more.',
    () => {
      for (const flow of [0.03, 0.1, 0.3]) {
        expectRising(turns.map((across) => inside(0.0202, across, flow)));
      }
    },
  );

  claim(
    'Even slow flow is stirred by the turns of the coil, far better than in a straight tube.',
    () => {
      for (const Re of [500, 1000, 3000]) {
        const straight = 4.36; // developed laminar flow at constant heat, the larger of the two
        expect(resultOf('curvedLaminar', { Re, Pr: 3, curvature: 0.058 })).toBeGreaterThan(
          2 * straight,
        );
      }
    },
  );

  claim('More flow: a coil in laminar flow is starved.', () => {
    expectMoves('curvedLaminar', { Re: [100, 6000], curvature: [0.01, 0.2] }, { Re: 'up' });
    expectRising([0.01, 0.03, 0.1, 0.3].map((flow) => inside(0.0202, 0.35, flow)));
  });

  claim(
    'The faster the primary runs through the bore, the thinner the layer at the wall that the heat must cross.',
    () => {
      expectMoves(
        'curvedTurbulent',
        { Re: [2.2e4, 1.5e5], Pr: [2, 10], f: [0.02, 0.05] },
        { Re: 'up' },
      );
    },
  );

  claim(
    'More flow or a smaller bore; against the outside of the coil this is seldom what limits.',
    () => {
      expectFalling(bores.map((bore) => inside(bore, 0.35, massFlow)));
      expectRising([0.1, 0.2, 0.4].map((flow) => inside(0.0202, 0.35, flow)));
      expect(inside(0.0202, 0.35, massFlow)).toBeGreaterThan(3 * 1200); // outside: 1000 to 1400 W/(m² K)
    },
  );
});

describe('pressure along the turns', () => {
  claim(
    'The turns throw the faster water outwards, which costs pressure even in slow flow.',
    () => {
      for (const Re of [1000, 2000]) {
        expect(resultOf('curvedLaminarFriction', { Re, curvature: 0.058 })).toBeGreaterThan(
          64 / Re,
        );
      }
    },
  );

  claim('Less pressure is lost with a larger bore or wider turns.', () => {
    const slow = 5e-6; // m³/s, laminar
    expectFalling(bores.map((bore) => drop(bore, 0.35, 12, slow)));
    expectRising(turns.map((across) => drop(0.0202, across, 12, slow)));
    expectMoves(
      'curvedLaminarFriction',
      { Re: [500, 5000], curvature: [0.02, 0.2] },
      { curvature: 'up' },
    );
  });

  claim(
    'A usual coil costs a fifth to two fifths more pressure than the same tube laid straight.',
    () => {
      for (const curvature of [0.035, 0.058, 0.1]) {
        for (const Re of [2.5e4, 5e4, 1e5]) {
          const straight = resultOf('pipeFriction', { Re, roughness: 0 });
          const times = resultOf('curvedTurbulentFriction', { Re, curvature }) / straight;
          expect(times).toBeGreaterThan(1.195); // a fifth, as it rounds
          expect(times).toBeLessThan(1.4);
        }
      }
    },
  );

  claim(
    'Less pressure is lost with a larger bore, a shorter coil or two coils side by side.',
    () => {
      expectFalling(bores.map((bore) => drop(bore, 0.35, 12, 2.5e-4)));
      expectRising([6, 12, 25].map((length) => drop(0.0202, 0.35, length, 2.5e-4)));
      expect(drop(0.0202, 0.35, 12, 1.25e-4)).toBeLessThan(drop(0.0202, 0.35, 12, 2.5e-4) / 2);
    },
  );
});

describe('wall and scale', () => {
  claim(
    'A thicker wall or a metal that conducts less holds the heat back; copper hardly does.',
    () => {
      expectMoves(
        'tubeWall',
        { inside: [0.018, 0.021], k: [15, 400] },
        { inside: 'down', k: 'down' },
      );
      expect(resultOf('tubeWall')).toBeLessThan(0.01 / 1200); // a hundredth of the film outside
    },
  );

  claim(
    'Stainless steel in place of copper raises it about twentyfold, and only then does it matter.',
    () => {
      const times = resultOf('tubeWall', { k: 16 }) / resultOf('tubeWall', { k: 390 });
      expect(times).toBeGreaterThan(15);
      expect(times).toBeLessThan(25);
    },
  );

  claim(
    [
      'Copper conducts so well that its wall hardly matters; stainless steel matters a little.',
      'Copper conducts so well that its thickness hardly matters.',
    ],
    () => {
      const thick = (metal: string, wall: number) =>
        recoveryWith({ 'coil.tubeMaterial': metal, 'coil.tubeWall': wall });
      expect(thick('copper', 0.8) / thick('copper', 0.3) - 1).toBeLessThan(0.005);
      const stainless = thick('stainless', 0.8) / thick('copper', 0.8) - 1;
      expect(stainless).toBeGreaterThan(0.005);
      expect(stainless).toBeLessThan(0.05);
    },
  );

  claim(
    'Descaling takes it away; porous scale conducts less (0.5 to 1.5 W/(m K), from memory) and is worse.',
    () => {
      expectMoves(
        'scale',
        { thickness: [1e-4, 5e-3], k: [0.5, 2.2] },
        { thickness: 'up', k: 'down' },
      );
      const scaled = (k: number) =>
        recoveryWith({ 'coil.scaleThickness': 1, 'coil.scaleConductivity': k });
      expectFalling([0.5, 1.5, 2.2].map(scaled));
      expect(recoveryWith()).toBeLessThan(scaled(2.2));
    },
  );
});

describe('outside the tube', () => {
  claim(
    'Warm films rise because they are lighter; thick water and quick conduction hold them back.',
    () => {
      expectMoves(
        'rayleigh',
        { beta: [1e-4, 7e-4], mu: [3e-4, 1.3e-3], k: [0.55, 0.68] },
        { beta: 'up', mu: 'down', k: 'down' },
      );
    },
  );

  claim(
    'Hotter films: between 20 and 60 °C it rises about fivefold for the same difference.',
    () => {
      const at = (T: number) =>
        resultOf('rayleigh', {
          beta: water.expansion(T),
          rho: water.density(T),
          c: water.specificHeat(T),
          mu: water.viscosity(T),
          k: water.conductivity(T),
          d: 0.022,
          difference: 10,
        });
      expect(at(60) / at(20)).toBeGreaterThan(4.5);
      expect(at(60) / at(20)).toBeLessThan(5.5);
    },
  );

  claim(
    'Water warmed by the tube rises off it; the larger the difference, the faster it rises and the more it takes.',
    () => {
      expectMoves('churchillChu', { Ra: [1e4, 1e8], Pr: [2, 10] }, { Ra: 'up' });
      expectMoves('rayleigh', { difference: [0.1, 60] }, { difference: 'up' });
    },
  );

  claim('A larger difference between coil and tank;', () => {
    expectMoves('churchillChu', { Ra: [1e4, 1e8], Pr: [2, 10] }, { Ra: 'up' });
  });

  claim(
    'Hot water is thin: at 80 °C it has little more than a quarter of the viscosity it has at 10 °C, so it moves and carries heat more easily.',
    () => {
      const quarter = water.viscosity(80) / water.viscosity(10);
      expect(quarter).toBeGreaterThan(0.25);
      expect(quarter).toBeLessThan(0.28);
      const film = (T: number) =>
        coilInside(
          water,
          { insideDiameter: 0.0202, coilDiameter: 0.35, insideEnhancement: 1 },
          massFlow,
          T,
        );
      expectRising([10, 40, 80].map(film));
    },
  );
});
