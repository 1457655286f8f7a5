import type { CoolDown } from '../../shared/coolDown.ts';
import { figure } from '../../shared/format.ts';
import { valueAt } from '../../shared/sampleAt.ts';
import type { TableOf } from '../charts/table.ts';

/** A cool-down as rows of text, one every two hours. */
export function coolDownTable(study: CoolDown): TableOf {
  const { time, top, mean, bottom, loss } = study;
  const end = time[time.length - 1];
  return {
    columns: ['h', 'top, °C', 'mean, °C', 'bottom, °C', 'loses, W'],
    rows: Array.from({ length: Math.floor(end / STEP) + 1 }, (_, row) => [
      figure((row * STEP) / 3600, 0),
      ...[top, mean, bottom, loss].map((line) => figure(valueAt(time, line, row * STEP), 1)),
    ]),
  };
}

/** Least and most of the temperatures, in whole steps of 10 °C, with the 40 °C that count clear of the lower end. */
export function coolDownDomain({ top, mean, bottom }: CoolDown): [number, number] {
  const all = [top, mean, bottom].flatMap((line) => [Math.min(...line), Math.max(...line)]);
  const low = Math.floor((Math.min(40, ...all) - 1) / 10) * 10;
  return [low, Math.max(low + 10, Math.ceil(Math.max(40, ...all) / 10) * 10)];
}

const STEP = 7200; // s
