/** What the model leaves out, one sentence each; the screen, the README and the command line print it. */
export const notModelled: readonly string[] = [
  'Water is computed in level layers: nothing varies across the cylinder, and the jet of incoming cold stirs by published fits that differ among themselves by several times.',
  'The boiler has one usual efficiency curve and one control law: no start-up sequence, no ramps, nothing that it learns.',
  'The circulator runs at one setting; there is no gravity circulation and no bypass, and air or dirt is only a resistance.',
  'Flow and return pipes are cut into at most ten mixed cells each, so that the front of a long run is blurred over a third of its delay.',
  'The water of the heating circuit is one body: no single radiators, no zones, no pipes of its own.',
  'The sensor has one lag and one offset; a thermistor’s own heating and pick-up on its lead are left out.',
  'One tap at a time, at a steady flow: a draw that would begin during another waits for its end; no secondary circulation.',
  'No heat pump, solar coil, combination boiler or thermal store.',
  'The house is air and fabric: no sun, no people, no single rooms; outside it is constant or follows one daily wave.',
  'Bacteria are not counted: temperatures are set against guidance and published times, as a band and never as a verdict.',
];
