import { describe, expect, test } from 'vitest';
import { Playing } from '../../../src/state/Playing.svelte.ts';
import { TimeCursor } from '../../../src/state/TimeCursor.svelte.ts';

function made(at = 0) {
  const moment = new TimeCursor(at);
  return { moment, playing: new Playing(moment) };
}
const END = 3600; // s

describe('time goes by', () => {
  test('at 5 minutes a second half a second is 2.5 minutes, or 2 whole ones and then, with as much again, 5', () => {
    const { moment, playing } = made();
    playing.speed = 5;
    playing.pass(0.5, END, false);
    expect(moment.seconds).toBe(150);
    const whole = made();
    whole.playing.speed = 5;
    whole.playing.pass(0.5, END, true);
    expect(whole.moment.seconds).toBe(120);
    whole.playing.pass(0.5, END, true);
    expect(whole.moment.seconds).toBe(300);
  });

  test('at the end it pauses, and at 10 minutes a second does not go beyond it', () => {
    const { moment, playing } = made(3590);
    playing.isRunning = true;
    playing.speed = 10;
    playing.pass(1, END, false);
    expect([moment.seconds, playing.isRunning]).toEqual([END, false]);
  });

  test('a step goes to the next whole minute and pauses: from 90 s to 120 s, then to 180 s', () => {
    const { moment, playing } = made(90);
    playing.isRunning = true;
    playing.step(END);
    expect([moment.seconds, playing.isRunning]).toEqual([120, false]);
    playing.step(END);
    expect(moment.seconds).toBe(180);
  });
});

describe('the switch', () => {
  test('is thrown at 600 s and again at 900 s, and stands as it stood at the moment', () => {
    const { moment, playing } = made(600);
    expect(playing.arrangement('priority')).toBe('priority');
    expect(playing.throwTo('priority', 'priority')).toBeNull();
    playing.throwTo('heatingFirst', 'priority');
    moment.set(900);
    playing.throwTo('simultaneous', 'priority');
    expect(playing.throws).toEqual([
      { at: 600, arrangement: 'heatingFirst' },
      { at: 900, arrangement: 'simultaneous' },
    ]);
    moment.set(700);
    expect(playing.arrangement('priority')).toBe('heatingFirst');
  });

  test('2 throws at one moment are 1, and a throw undoes what was to come after it', () => {
    const { moment, playing } = made(600);
    playing.throwTo('heatingFirst', 'priority');
    playing.throwTo('simultaneous', 'priority');
    expect(playing.throws).toEqual([{ at: 600, arrangement: 'simultaneous' }]);
    moment.set(300);
    playing.throwTo('heatingFirst', 'priority');
    expect(playing.throws).toEqual([{ at: 300, arrangement: 'heatingFirst' }]);
  });

  test('back at the start 0 throws are left', () => {
    const { moment, playing } = made(600);
    playing.throwTo('heatingFirst', 'priority');
    playing.toStart();
    expect([moment.seconds, playing.throws]).toEqual([0, []]);
  });
});
