import { burner } from './burner.ts';
import { circulator } from './circulator.ts';
import { drawing } from './drawing.ts';
import { efficiency } from './efficiency.ts';
import { hygiene } from './hygiene.ts';
import { inside } from './inside.ts';
import { layers } from './layers.ts';
import { loss } from './loss.ts';
import { money } from './money.ts';
import { ohms } from './ohms.ts';
import { outside } from './outside.ts';
import { passes } from './passes.ts';
import { pipes } from './pipes.ts';
import { rooms } from './rooms.ts';
import { rule } from './rule.ts';
import type { Section } from './section.ts';
import { sensor } from './sensor.ts';
import { stored } from './stored.ts';
import { tap } from './tap.ts';
import { wall } from './wall.ts';

/** The whole explanation, in the order the heat travels: from what is to be stored to what it has cost. */
export const sections: readonly Section[] = [
  stored,
  rule,
  burner,
  efficiency,
  circulator,
  pipes,
  inside,
  wall,
  outside,
  passes,
  layers,
  sensor,
  ohms,
  rooms,
  drawing,
  tap,
  hygiene,
  loss,
  money,
];
