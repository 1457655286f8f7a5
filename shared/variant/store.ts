import type { Month } from '../coldWater.ts';
import type {
  Celsius,
  CubicMetres,
  CubicMetresPerSecond,
  Kelvins,
  Metres,
  Ohms,
  Seconds,
  Share,
  SquareMetres,
  Watts,
  WattsPerKelvin,
  WattsPerMetreKelvin,
} from '../units.ts';

export interface Coil {
  readonly given: 'geometry' | 'area' | 'rating' | 'conductance';
  readonly bottom: Metres;
  readonly top: Metres;
  readonly flowEnters: 'top' | 'bottom';
  readonly tubeOutside: Metres;
  readonly tubeWall: Metres;
  readonly tubeMaterial: Metal;
  readonly coilDiameter: Metres;
  readonly length: Metres;
  readonly area: SquareMetres;
  /** Outside coefficient over that of a single horizontal tube. */
  readonly enhancement: number;
  readonly scaleThickness: Metres;
  readonly scaleConductivity: WattsPerMetreKelvin;
  /** Mean output while a mixed store goes from `ratedFrom` to `ratedTo`. */
  readonly ratedOutput: Watts;
  readonly ratedFlow: CubicMetresPerSecond;
  readonly ratedInlet: Celsius;
  readonly ratedFrom: Celsius;
  readonly ratedTo: Celsius;
  readonly conductance: WattsPerKelvin;
}

/** A second coil, through which the primary water passes after (below) or before (above) the first. */
export interface SecondCoil extends Coil {
  readonly fitted: 'no' | 'inSeries';
}

export type Metal = 'copper' | 'stainless' | 'steel';

export interface Cylinder {
  readonly supply: 'vented' | 'unvented';
  readonly volume: CubicMetres;
  readonly height: Metres;
  readonly wallMaterial: Metal;
  readonly wallThickness: Metres;
  /** Where the standing loss comes from: declared as heat in 24 h or as power, by insulation, or by class. */
  readonly lossFrom: 'declared' | 'declaredPower' | 'insulation' | 'class';
  /** Declared as heat in 24 h: its mean, with the store `declaredAt` above its surroundings. */
  readonly standingLoss: Watts;
  /** Declared as power, with the store `declaredAt` above its surroundings. */
  readonly declaredPower: Watts;
  /** In kelvins, the difference of the test. */
  readonly declaredAt: '45' | '55';
  /** Foam from the factory, or a loose jacket. */
  readonly insulation: 'factory' | 'jacket';
  readonly insulationThickness: Metres;
  /** As printed on the label: the store loses the most its class allows. */
  readonly lossClass: 'A+' | 'A' | 'B' | 'C' | 'D' | 'E' | 'F';
  readonly surroundings: Celsius;
  /** Multiplies conduction through the water, for whatever else stirs it. */
  readonly stirring: number;
}

export interface Stat {
  readonly sensorHeight: Metres;
  /** How the sensor is fixed; all but `asTyped` have a usual lag and offset. */
  readonly mounting: 'asTyped' | 'wetPocket' | 'dryPocket' | 'strappedLagged' | 'strappedBare';
  readonly lag: Seconds;
  /** Part of the way from the water to the air around that the sensor settles at. */
  readonly airShare: Share;
  readonly setPoint: Celsius;
  /** Calls again when the reading has fallen this far below the set-point. */
  readonly differential: Kelvins;
}

/** The electrical chain from the sensor to what the controller reads. */
export interface Sensor {
  /** `true`: reads right, as a mechanical stat or a healthy chain does. */
  readonly element: 'true' | 'thermistor' | 'steinhartHart' | 'platinum';
  readonly r25: Ohms;
  readonly beta: Kelvins;
  readonly steinhartA: number;
  readonly steinhartB: number;
  readonly steinhartC: number;
  /** At 0 °C. */
  readonly platinumOhms: Ohms;
  /** What the controller takes the element for. */
  readonly expects: 'same' | 'thermistor' | 'platinum';
  readonly expectedR25: Ohms;
  readonly expectedBeta: Kelvins;
  /** One way. */
  readonly leadLength: Metres;
  /** Of each core, in square millimetres. */
  readonly leadSection: '0.5' | '0.75' | '1.0';
  /** Of a bad joint, in series; 0 for a good one. */
  readonly jointResistance: Ohms;
  /** Of a damp joint, across the leads; 0 for a dry one. */
  readonly dampResistance: Ohms;
  readonly fault: 'none' | 'open' | 'short';
  /** From the start of the run. */
  readonly faultAt: Seconds;
}

export interface Immersion {
  readonly used: 'no' | 'withBoiler' | 'insteadOfBoiler';
  readonly output: Watts;
  /** Height of the element and of its stat. */
  readonly height: Metres;
  readonly setPoint: Celsius;
  readonly differential: Kelvins;
}

export interface Draw {
  /** Where the temperature of the incoming cold comes from. */
  readonly coldFrom: 'typed' | 'mains' | 'cistern';
  readonly incomingCold: Celsius;
  /** 1 for January. */
  readonly month: Month;
  /** Water drawn during the run; 0 for none. */
  readonly volume: CubicMetres;
  readonly flow: CubicMetresPerSecond;
  readonly startsAt: Seconds;
  /** As the store gives it, or mixed with cold at the tap; volume and flow are what leaves the tap. */
  readonly taken: 'hot' | 'mixed';
  /** Wanted at the tap when mixed. */
  readonly mixedTo: Celsius;
  /** How the cold water enters: spread over a typed height, or as a jet from a plain or a deflecting inlet. */
  readonly inlet: 'asTyped' | 'plain' | 'deflected';
  /** Incoming water is spread evenly over this height above the base. */
  readonly inletMixing: Metres;
  /** Of the inlet above the base. */
  readonly inletHeight: Metres;
  readonly inletBore: Metres;
  /** Pipe from the store to the tap; 0 for a tap at the store. */
  readonly pipeLength: Metres;
  /** Outside diameter in millimetres, as the tube is sold. */
  readonly pipeSize: '8' | '10' | '12' | '15' | '22' | '28' | '35';
  /** Thickness of its lagging; 0 for bare pipe. */
  readonly pipeLagging: Metres;
}

export interface Start {
  /** Share of the store that is hot when the run starts; the rest is at the incoming temperature. */
  readonly hotShare: Share;
  readonly hotTemperature: Celsius;
  /** Height over which the boundary between hot and cold is spread. */
  readonly boundary: Metres;
}
