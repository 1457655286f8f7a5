/** What the model leaves out, one sentence each; the screen, the README and the command line print it. */
export const notModelled: readonly string[] = [
  'Water is computed in level layers: nothing varies across the cylinder, and the jet of incoming cold is only the stated mixing height.',
  'The boiler holds its flow limit exactly and turns down to nothing: no burner minimum, no off-time, no water content, no fuel or efficiency.',
  'The primary flow is the one that is set: no circulator curve, no pressure drop, no gravity circulation.',
  'Primary pipes lose heat but hold none, so a long run shows no delay.',
  'Valves open and shut at once, and the stat switches exactly at its set-point and differential.',
  'The sensor reads the water at its height after a lag: no strapped-on offset, no thermistor characteristic, no wiring.',
  'One draw in each run, at a steady flow, and no secondary circulation.',
  'No immersion heater, heat pump, solar coil, combination boiler or thermal store.',
  'The house is air and fabric with a constant outside temperature: no sun, no people, no single rooms.',
  'Bacteria are not counted; cautions go by temperature alone.',
];
