import { expect } from 'vitest';
import type { StudyPoint } from '../../shared/study.ts';
import { placementFinding } from '../../shared/sentences/placement.ts';
import { arrangementFinding, differentialFinding } from '../../shared/sentences/studies.ts';
import { type FigureWords, plain } from '../../shared/sentences.ts';
import { dayFinding } from '../../shared/sentences/day.ts';
import { dayRun } from '../../sim/run/day.ts';
import { toEnd } from '../../sim/run/toEnd.ts';
import { claim } from '../support/claim.ts';
import { houseWith, runWith } from '../support/houseWith.ts';

// Words that compare two numbers: turned round, the numbers turn the words round

const text = ({ heading, summary }: FigureWords) =>
  [heading, ...summary].map((sentence) => plain(sentence).replaceAll('\u00a0', ' ')).join(' ');

const point = (value: number, minutes: number, litres: number): StudyPoint => ({
  value,
  callsAtStart: true,
  recovery: minutes * 60,
  usableAtSatisfied: litres / 1000,
  usableAtCall: litres / 1000,
  reheatAfterCall: 600,
  callsPerDay: 3,
});

claim(['… K warmer', '… K cooler', 'saves …'], () => {
  const priority = runWith({ 'heating.arrangement': 'priority' });
  const simultaneous = runWith({ 'heating.arrangement': 'simultaneous' });
  const asRun = text(arrangementFinding({ kind: 'arrangement', priority, simultaneous }));
  expect(asRun).toMatch(/costs \d+\.\d min .* K warmer at their lowest/);
  const turned = { kind: 'arrangement', priority: simultaneous, simultaneous: priority } as const;
  expect(text(arrangementFinding(turned))).toMatch(/saves \d+\.\d min .* K cooler at their lowest/);
});

claim(['less', 'more'], () => {
  const run = runWith();
  const finding = (narrow: number, wide: number) =>
    text(
      differentialFinding(
        { kind: 'differential', points: [point(2, 40, narrow), point(15, 40, wide)] },
        run,
      ),
    );
  expect(finding(240, 220)).toContain('calls with 20 l less usable water left');
  expect(finding(220, 240)).toContain('calls with 20 l more usable water left');
});

claim(['saves', 'gains'], () => {
  const run = runWith();
  const finding = (low: StudyPoint, high: StudyPoint) =>
    text(placementFinding({ kind: 'placement', points: [low, high] }, run));
  expect(finding(point(0.1, 45, 330), point(1.1, 25, 180))).toContain(
    'saves 20.0 min and gives up 150 l',
  );
  expect(finding(point(0.1, 25, 180), point(1.1, 45, 330))).toContain(
    'costs 20.0 min and gains 150 l',
  );
  const day = toEnd(dayRun(houseWith({ 'run.layers': 24, 'day.repeat': 'stated', 'day.days': 1 })));
  const lost = (standingLoss: number) =>
    text(dayFinding({ ...day, measures: { ...day.measures, standingLoss } }));
  expect(lost(3.6e6)).toContain('the cylinder loses 1.00 kWh');
  expect(lost(-3.6e6)).toContain('the cylinder gains 1.00 kWh');
});
