import { describe, expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import { withSetting } from '../../../shared/variant.ts';
import { coilDrawing } from '../../../src/drawing/coilDrawing.ts';
import { sectionNames } from '../../../src/drawing/sectionNames.ts';
import { sectionPlan } from '../../../src/drawing/sectionPlan.ts';

const variant = defaultVariant('drawn'); // 210 l, 1.32 m, 12 m of 22 mm tube from 0.08 to 0.48 m
const plan = sectionPlan(variant, 394, 392);

describe('the plan of the section', () => {
  test('210 l and 1.32 m are drawn to one scale both ways', () => {
    const radius = Math.sqrt(0.21 / (Math.PI * 1.32));
    expect(plan.radius / plan.scale).toBeCloseTo(radius, 9); // exact but for rounding of doubles
    expect((plan.y(0) - plan.y(1.32)) / plan.scale).toBeCloseTo(1.32, 9);
  });

  test.each([190, 226, 288, 358, 394, 600])(
    'at %i pixels nothing but names is outside',
    (width) => {
      const { middle, outer, pipeEnd, nameLeft, sensorLine } = sectionPlan(variant, width, 392);
      expect(middle - outer).toBeGreaterThan(0);
      expect(sensorLine - 11).toBeGreaterThanOrEqual(0);
      expect(pipeEnd).toBeLessThan(nameLeft);
      expect(width - nameLeft).toBeGreaterThanOrEqual(48); // "return 69" at 12 px
    },
  );

  test('2000 l and 0.3 m are held to the width, 30 l and 3 m to the height', () => {
    const flat = withSetting(withSetting(variant, 'cylinder.volume', 2), 'cylinder.height', 0.3);
    const slim = withSetting(withSetting(variant, 'cylinder.volume', 0.03), 'cylinder.height', 3);
    const wide = sectionPlan(flat, 394, 392);
    expect(wide.middle + wide.outer).toBeLessThan(394 - 70);
    expect(sectionPlan(slim, 394, 392).scale).toBeCloseTo(392 / 3, 9);
  });
});

describe('the coil cut open', () => {
  test('12 m of tube on 0.35 m give 11 turns: 11 cuts on the left and 12 on the right', () => {
    const coil = coilDrawing(variant.coil, plan);
    expect(12 / (Math.PI * 0.35)).toBeCloseTo(10.9, 1); // rounded to whole turns
    expect(coil.turns).toBe(11);
    expect(coil.isTrueToTurns).toBe(true);
    expect(coil.cuts.filter(({ x }) => x < plan.middle)).toHaveLength(11);
    expect(coil.cuts.filter(({ x }) => x > plan.middle)).toHaveLength(12);
  });

  test('its cuts lie between 0.08 and 0.48 m and inside the shell', () => {
    const { cuts, tubeRadius } = coilDrawing(variant.coil, plan);
    for (const { x, y } of cuts) {
      expect(y - tubeRadius).toBeGreaterThanOrEqual(plan.y(0.48) - 1e-9);
      expect(y + tubeRadius).toBeLessThanOrEqual(plan.y(0.08) + 1e-9);
      expect(Math.abs(x - plan.middle)).toBeLessThan(plan.radius);
    }
  });

  test('100 m of tube in 0.40 m are drawn with as many turns as stand clear, and said to be', () => {
    const coil = coilDrawing({ ...variant.coil, length: 100 }, plan);
    const rights = coil.cuts.filter(({ x }) => x > plan.middle).map(({ y }) => y);
    expect(coil.isTrueToTurns).toBe(false);
    expect(rights[1] - rights[0]).toBeGreaterThan(2 * coil.tubeRadius);
  });
});

describe('names beside the section', () => {
  const coils = [{ coil: variant.coil, drawing: coilDrawing(variant.coil, plan) }];
  const names = sectionNames(variant, coils, plan, { flow: 79.6, back: 68.9, usable: 0.286 });

  test('flow reads 80, return 69 and the hot pipe 286 l', () => {
    const text = Object.fromEntries(names.map(({ key, text, value }) => [key, `${text} ${value}`]));
    expect(text.flow).toBe('flow 80');
    expect(text.return).toBe('return 69');
    expect(text.usable).toBe('286\u00a0l at 40 °C ');
    expect(text['coil0.1']).toBe('12 m of tube ');
  });

  test('no 2 of the 7 names stand closer than 15 pixels', () => {
    const places = names.map(({ at }) => at).sort((one, other) => one - other);
    expect(places).toHaveLength(7);
    places.slice(1).forEach((at, index) => {
      expect(at - places[index]).toBeGreaterThanOrEqual(15 - 1e-9);
    });
  });

  test('flow enters at the top of the coil, 0.48 m, or at its bottom, 0.08 m', () => {
    const flowAt = (flowEnters: 'top' | 'bottom') => {
      const coil = { ...variant.coil, flowEnters };
      const drawn = [{ coil, drawing: coilDrawing(coil, plan) }];
      const readings = { flow: 80, back: 70, usable: 0 };
      return sectionNames(variant, drawn, plan, readings).find(({ key }) => key === 'flow')?.y;
    };
    expect(flowAt('top')).toBe(coils[0].drawing.topEnd);
    expect(flowAt('bottom')).toBe(coils[0].drawing.bottomEnd);
  });

  test('without water in the primary flow and return stand without a number', () => {
    const still = sectionNames(variant, coils, plan, {
      flow: Number.NaN,
      back: Number.NaN,
      usable: 0,
    });
    expect(
      still.filter(({ key }) => ['flow', 'return'].includes(key)).map(({ value }) => value),
    ).toEqual(['', '']);
  });
});
