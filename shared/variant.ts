import type {
  Celsius,
  CubicMetres,
  CubicMetresPerSecond,
  Kelvins,
  Metres,
  Seconds,
  Share,
  SquareMetres,
  Watts,
  WattsPerKelvin,
  WattsPerMetreKelvin,
} from './units.ts';

/**
 * One installation and its settings, in SI units. Layers of water are numbered from the bottom, 0
 * upwards; heights are metres above the inside base of the cylinder; heat into water is positive.
 * Labels, limits, defaults and their sources are in `fields.ts`; the file form is in `codec.ts`.
 */
export interface Variant {
  readonly name: string;
  readonly boiler: Boiler;
  readonly primary: Primary;
  readonly coil: Coil;
  readonly secondCoil: SecondCoil;
  readonly cylinder: Cylinder;
  readonly stat: Stat;
  readonly draw: Draw;
  readonly start: Start;
  readonly heating: Heating;
  readonly house: House;
  readonly run: RunSettings;
}

export interface Boiler {
  readonly output: Watts;
  /** Flow temperature aimed at, and not passed, while the cylinder is heated. */
  readonly hotWaterFlow: Celsius;
  /** Flow temperature aimed at, and not passed, while only the radiators are heated. */
  readonly heatingFlow: Celsius;
}

export interface Primary {
  readonly flow: CubicMetresPerSecond;
  /** Part of the flow that goes through the coil while coil and radiators run together. */
  readonly coilShare: Share;
  /** From boiler to cylinder, one way. */
  readonly length: Metres;
  /** Per metre of pipe and kelvin above the surroundings. */
  readonly heatLoss: WattsPerMetreKelvin;
}

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
  /** Heat lost with the store 45 K above its surroundings. */
  readonly standingLoss: Watts;
  readonly surroundings: Celsius;
  /** Multiplies conduction through the water, for whatever else stirs it. */
  readonly stirring: number;
}

export interface Stat {
  readonly sensorHeight: Metres;
  readonly lag: Seconds;
  readonly setPoint: Celsius;
  /** Calls again when the reading has fallen this far below the set-point. */
  readonly differential: Kelvins;
}

export interface Draw {
  readonly incomingCold: Celsius;
  /** Water drawn from the top during the run; 0 for none. */
  readonly volume: CubicMetres;
  readonly flow: CubicMetresPerSecond;
  readonly startsAt: Seconds;
  /** Incoming water is spread evenly over this height above the base. */
  readonly inletMixing: Metres;
}

export interface Start {
  /** Share of the store that is hot when the run starts; the rest is at the incoming temperature. */
  readonly hotShare: Share;
  readonly hotTemperature: Celsius;
  /** Height over which the boundary between hot and cold is spread. */
  readonly boundary: Metres;
}

export interface Heating {
  readonly arrangement: Arrangement;
  /** Of all radiators together, at 50 K above the room. */
  readonly radiatorOutput: Watts;
  readonly radiatorExponent: number;
  readonly waterContent: CubicMetres;
  readonly roomSetPoint: Celsius;
  readonly roomDifferential: Kelvins;
}

/** Who gets the boiler when both cylinder and rooms call. */
export type Arrangement = 'priority' | 'simultaneous' | 'hotWaterOnly';

export interface House {
  readonly heatLoss: WattsPerKelvin;
  readonly floorArea: SquareMetres;
  readonly mass: 'light' | 'medium' | 'heavy';
  readonly outside: Celsius;
}

export interface RunSettings {
  readonly duration: Seconds;
  readonly layers: number;
  readonly water: 'measured' | 'constant';
}

/** The parts of a variant that hold settings, in the order the heat travels. */
export const groups = [
  'boiler',
  'primary',
  'coil',
  'secondCoil',
  'cylinder',
  'stat',
  'draw',
  'start',
  'heating',
  'house',
  'run',
] as const satisfies readonly Exclude<keyof Variant, 'name'>[];

export type Group = (typeof groups)[number];

/** Where a setting stands in a variant, e.g. `boiler.output`. */
export type FieldPath = { [G in Group]: `${G}.${keyof Variant[G] & string}` }[Group];

/** The value of one setting, in SI. */
export function settingOf(variant: Variant, path: FieldPath): number | string {
  const [group, key] = path.split('.') as [Group, string];
  return (variant[group] as unknown as Record<string, number | string>)[key];
}

/** The same variant with one setting, in SI, put to another value. */
export function withSetting(variant: Variant, path: FieldPath, value: number | string): Variant {
  const [group, key] = path.split('.') as [Group, string];
  return { ...variant, [group]: { ...variant[group], [key]: value } };
}
