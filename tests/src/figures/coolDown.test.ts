import { expect, test } from 'vitest';
import { defaultVariant } from '../../../shared/fields.ts';
import type { CoolDown } from '../../../shared/coolDown.ts';
import type { Study } from '../../../shared/study.ts';
import { withSetting } from '../../../shared/variant.ts';
import { coolDownDomain, coolDownTable } from '../../../src/figures/coolDownTable.ts';
import { coolDownStudy } from '../../../sim/run/coolDown.ts';

function leftAlone(setPoint: number): CoolDown {
  const study = coolDownStudy(withSetting(defaultVariant('store'), 'stat.setPoint', setPoint));
  for (;;) {
    const step = study.next();
    if (step.done) return step.value as Extract<Study, { kind: 'coolDown' }>;
  }
}

test('48 h are 25 rows of 5 cells, every 2 h, from 60.0 °C and 66.7 W', () => {
  const { columns, rows } = coolDownTable(leftAlone(60));
  expect(columns).toEqual(['h', 'top, °C', 'mean, °C', 'bottom, °C', 'loses, W']);
  expect(rows).toHaveLength(25);
  expect(rows[0]).toEqual(['0', '60.0', '60.0', '60.0', '66.7']);
  expect(rows[24][0]).toBe('48');
  for (let row = 1; row < 25; row++) {
    expect(Number(rows[row][1])).toBeLessThan(Number(rows[row - 1][1]));
  }
});

test('the axis goes from 30 to 60 °C for 60 °C, from 30 to 50 °C for 45 °C, always with 40 °C inside', () => {
  expect(coolDownDomain(leftAlone(60))).toEqual([30, 60]);
  expect(coolDownDomain(leftAlone(45))).toEqual([30, 50]);
});
