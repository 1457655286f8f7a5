import { lowestCoil } from '../fittedCoils.ts';
import { mountingOf, mountings } from '../mounting.ts';
import { type Variant, withSetting } from '../variant.ts';
import { type Proposal, type Propose, told, withStep } from './proposal.ts';

/** Sensor and stat: where it sits, how it is fixed, what is wrong with its wiring, when it calls. */
export const sensorProposals: Propose = (variant, result) => [
  ...heights(variant),
  fixing(variant),
  ...wiring(variant),
  differential(
    variant,
    result.marks.some(({ kind, at }) => kind === 'hotWaterCalled' && at === 0),
  ),
];

/** A little up or down, or a third of the way up; never under the coil. */
function heights(variant: Variant): (Proposal | null)[] {
  const { stat, cylinder } = variant;
  const places = [...MOVES.map((move) => stat.sensorHeight + move), cylinder.height / 3];
  return places
    .filter((height) => height > lowestCoil(variant) && height < MOST_SHARE * cylinder.height)
    .map((height) => {
      const moved = withStep(variant, 'stat.sensorHeight', height);
      const way = moved.stat.sensorHeight > stat.sensorHeight ? 'up' : 'down';
      const text = `Move the sensor ${way} to ${told(moved, 'stat.sensorHeight')}`;
      return { key: 'sensorHeight', cause: 'sensor', text, variant: moved };
    });
}

function fixing(variant: Variant): Proposal | null {
  const { stat } = variant;
  const { lag, airShare } = mountingOf(stat);
  const key = 'sensorFixing';
  if (stat.mounting === 'strappedBare') {
    const text = 'Strap the sensor on properly and lag it';
    const lagged = withSetting(variant, 'stat.mounting', 'strappedLagged');
    return { key, cause: 'sensor', text, variant: lagged };
  }
  const wet = mountings.wetPocket;
  if (lag <= wet.lag && airShare <= wet.airShare) return null;
  const text =
    stat.mounting === 'dryPocket'
      ? 'Grease the pocket of the sensor'
      : 'Put the sensor into a greased pocket';
  const pocketed = withSetting(variant, 'stat.mounting', 'wetPocket');
  return { key, cause: 'sensor', text, variant: pocketed };
}

function wiring(variant: Variant): (Proposal | null)[] {
  const { sensor } = variant;
  if (sensor.element === 'true') return [];
  const cause = 'sensor';
  const mended = (path: Parameters<typeof withSetting>[1], value: number | string) =>
    withSetting(variant, path, value);
  return [
    sensor.expects === 'same'
      ? null
      : {
          ...{ key: 'characteristic', cause },
          text: 'Fit a sensor of the characteristic that the controller expects',
          variant: mended('sensor.expects', 'same'),
        },
    sensor.jointResistance > 0
      ? {
          ...{ key: 'joint', cause },
          text: 'Mend the bad joint in the sensor lead',
          variant: mended('sensor.jointResistance', 0),
        }
      : null,
    sensor.dampResistance > 0
      ? {
          ...{ key: 'dampJoint', cause },
          text: 'Dry and seal the damp joint in the sensor lead',
          variant: mended('sensor.dampResistance', 0),
        }
      : null,
    sensor.fault === 'none'
      ? null
      : {
          ...{ key: 'lead', cause },
          text: 'Mend or replace the faulty sensor lead',
          variant: mended('sensor.fault', 'none'),
        },
  ];
}

/** Only where the stat waits as the run starts: once it calls, the differential changes nothing. */
function differential(variant: Variant, calls: boolean): Proposal | null {
  const least = NARROW.find((each) => each < variant.stat.differential);
  if (calls || least === undefined) return null;
  const narrow = withStep(variant, 'stat.differential', least);
  return {
    key: 'differential',
    cause: 'sensor',
    text: `Set the differential to ${told(narrow, 'stat.differential')}; the stat then calls more often`,
    variant: narrow,
  };
}

const MOVES = [-0.2, -0.1, 0.1, 0.2]; // m; engineering guess, no source: what a strapped sensor can be moved
const MOST_SHARE = 0.6; // of the height; higher up the sensor keeps little of the store hot
const NARROW = [5, 3]; // K; common practice, no source: 5 to 10 K, and 3 K before a boiler is lit too often
