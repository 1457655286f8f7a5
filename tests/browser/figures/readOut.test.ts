import axe from 'axe-core';
import { expect, test } from 'vitest';
import { page, userEvent } from 'vitest/browser';
import { render } from 'vitest-browser-svelte';
import '../../../src/tokens.css';
import ReadOut from '../../../src/figures/ReadOut.svelte';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';
import { inventedResult } from '../../make/result.ts';

const result = inventedResult(); // 10 to 60 °C in a straight line in 40 min

test('at 20 min it reads 35.0 °C at the top and names it with its unit; a press opens "top"', async () => {
  const opened: string[] = [];
  await render(ReadOut, {
    result,
    moment: new TimeCursor(1200),
    onopen: (quantity) => opened.push(quantity),
  });
  const top = page.getByRole('button', { name: 'top 35.0 degrees Celsius, open the working' });
  await userEvent.click(top);
  expect(opened).toEqual(['top']);
});

test('at 60 min, with the coil at rest, flow and return are none and the stat is satisfied', async () => {
  const { container } = await render(ReadOut, { result, moment: new TimeCursor(3600) });
  await expect
    .element(page.getByRole('button', { name: 'flow none open the working' }))
    .toBeVisible();
  await expect
    .element(page.getByRole('button', { name: 'return none open the working' }))
    .toBeVisible();
  expect(container.textContent?.replace(/\s+/g, ' ')).toContain('At 60 min: the stat is satisfied');
});

test('no number moves when the moment goes from 5 to 35 min, and 0 rules of access are broken', async () => {
  const moment = new TimeCursor(300);
  const { container } = await render(ReadOut, { result, moment });
  const lefts = () =>
    [...container.querySelectorAll('dd')].map((node) => node.getBoundingClientRect().left);
  const before = lefts();
  expect(before).toHaveLength(7);
  moment.set(2100);
  await expect.element(page.getByText('35 min')).toBeVisible();
  expect(lefts()).toEqual(before);
  const { violations } = await axe.run(container);
  expect(violations.map(({ id }) => id)).toEqual([]);
});
