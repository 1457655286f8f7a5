import { settingText } from '../../shared/format.ts';
import { type FieldPath, type Group, settingOf, type Variant } from '../../shared/variant.ts';

/**
 * The settings of a group that say most, in one line beside its name. Remembered with the group, so that a handle that is
 * dragged makes only the line of its own group anew.
 */
export function digest(group: Group, variant: Variant): string {
  const known = remembered.get(variant[group]);
  if (known !== undefined) return known;
  const text = made(group, variant);
  remembered.set(variant[group], text);
  return text;
}

const remembered = new WeakMap<object, string>();

function made(group: Group, variant: Variant): string {
  const say = (path: FieldPath) => settingText(path, settingOf(variant, path));
  switch (group) {
    case 'boiler':
      return `${say('boiler.output')}, ${variant.boiler.targets === 'shared' ? `both ${say('boiler.heatingFlow')}` : `hot water ${say('boiler.hotWaterFlow')}`}`;
    case 'primary':
      return variant.primary.flowFrom === 'given'
        ? `${say('primary.flow')}, ${say('primary.length')} away`
        : `${say('primary.size')}, ${say('primary.length')} away`;
    case 'circulator':
      return variant.circulator.kind === 'curve'
        ? `${say('circulator.shutOffHead')}, ${say('circulator.largestFlow')}`
        : `holds ${say('circulator.setHead')}`;
    case 'coil':
      return coilDigest('coil', variant);
    case 'secondCoil':
      return variant.secondCoil.fitted === 'no' ? 'none' : coilDigest('secondCoil', variant);
    case 'cylinder':
      return `${say('cylinder.volume')}, ${say('cylinder.height')}`;
    case 'stat':
      return `${say('stat.sensorHeight')}, ${say('stat.setPoint')} − ${say('stat.differential')}`;
    case 'sensor':
      return sensorDigest(variant);
    case 'immersion':
      return variant.immersion.used === 'no'
        ? 'none'
        : `${say('immersion.output')}, ${say('immersion.used')}`;
    case 'draw':
      return variant.draw.volume === 0 ? 'none' : `${say('draw.volume')} at ${say('draw.flow')}`;
    case 'day':
      return say('day.pattern');
    case 'start':
      return variant.start.hotShare === 0 ? 'all cold' : `${say('start.hotShare')} hot`;
    case 'heating':
      return say('heating.arrangement');
    case 'house':
      return `${say('house.heatLoss')}, outside ${say('house.outside')}`;
    case 'programme':
      return programmeDigest(variant);
    case 'prices':
      return `fuel ${say('prices.fuel')}`;
    case 'unknowns':
      return `flow ± ${say('unknowns.primaryFlow')}`;
    case 'run':
      return `${say('run.duration')}, ${say('run.layers')} layers`;
  }
}

function sensorDigest({ sensor }: Variant): string {
  if (sensor.element === 'true') return 'reads true';
  const bad = [
    sensor.jointResistance > 0 && 'bad joint',
    sensor.dampResistance > 0 && 'damp',
    sensor.fault !== 'none' && sensor.fault,
  ].filter(Boolean);
  const element = sensor.element === 'platinum' ? 'platinum' : 'thermistor';
  return [element, ...bad].join(', ');
}

function programmeDigest({ programme }: Variant): string {
  const timed = [
    programme.hotWater === 'timed' && 'hot water',
    programme.heating === 'timed' && 'heating',
  ].filter(Boolean);
  return timed.length === 0 ? 'always on' : `${timed.join(' and ')} timed`;
}

function coilDigest(group: 'coil' | 'secondCoil', variant: Variant): string {
  const keys = {
    geometry: 'length',
    area: 'area',
    rating: 'ratedOutput',
    conductance: 'conductance',
  } as const;
  const { given, scaleThickness } = variant[group];
  const path = `${group}.${keys[given]}` as FieldPath;
  const size = settingText(path, settingOf(variant, path));
  const what = given === 'geometry' ? `${size} of tube` : size;
  if (given === 'conductance' || scaleThickness === 0) return what;
  return `${what}, ${settingText(`${group}.scaleThickness`, scaleThickness)} scale`;
}
