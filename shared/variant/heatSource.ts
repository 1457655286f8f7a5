import type {
  Celsius,
  CubicMetres,
  CubicMetresPerSecond,
  Kelvins,
  Metres,
  Pascals,
  Seconds,
  Share,
  Watts,
  WattsPerMetreKelvin,
} from '../units.ts';

export interface Boiler {
  /**
   * `asBuilt`: burner between two outputs under a controller, with water in it, in the pipes and in
   * the coil. `ideal`: holds its limits exactly, turns down to nothing, and nothing holds heat.
   */
  readonly model: 'asBuilt' | 'ideal';
  /** The most heat to the water, at a flow of 80 °C and a return of 60 °C. */
  readonly output: Watts;
  /** The least it gives while the burner is lit, at the same temperatures. */
  readonly minimumOutput: Watts;
  /** Flow temperature aimed at, and not passed, while the cylinder is heated. */
  readonly hotWaterFlow: Celsius;
  /** Flow temperature aimed at, and not passed, while only the radiators are heated. */
  readonly heatingFlow: Celsius;
  /** `shared`: the target of heating serves the cylinder too. */
  readonly targets: 'separate' | 'shared';
  /** Water in the boiler; its metal counts as water of equal heat. */
  readonly waterContent: CubicMetres;
  /** Below the target by this much the controller asks for full output. */
  readonly proportionalBand: Kelvins;
  /** Time in which the controller makes up what the band leaves over. */
  readonly resetTime: Seconds;
  /** Above the target by this much the burner goes off. */
  readonly offMargin: Kelvins;
  /** Below the target by this much it may light again. */
  readonly restartBelow: Kelvins;
  /** The burner rests at least this long before it lights again. */
  readonly minimumOff: Seconds;
  /** The circulator runs on for this long after the last call. */
  readonly postRun: Seconds;
  /** Temperature at which the boiler's own safety limiter locks it out. */
  readonly highLimit: Celsius;
  /** Of the boiler's water side, at the reference flow of 15 l/min. */
  readonly pressureDrop: Pascals;
  /** Added to the efficiency of the curve, as a share. */
  readonly efficiencyShift: Share;
}

export interface Primary {
  /** Whether the flows follow from pipes, resistances and circulator, or are set. */
  readonly flowFrom: 'network' | 'given';
  readonly flow: CubicMetresPerSecond;
  /** Part of the flow that goes through the coil while coil and radiators run together. */
  readonly coilShare: Share;
  /** Outside diameter in millimetres, as the tube is sold. */
  readonly size: '8' | '10' | '12' | '15' | '22' | '28' | '35';
  /** From boiler to cylinder, one way. */
  readonly length: Metres;
  /** Bends on the way there and back. */
  readonly bends: number;
  readonly lossFrom: 'lagging' | 'given';
  /** Thickness of the lagging; 0 for bare pipe. */
  readonly lagging: Metres;
  /** Per metre of pipe and kelvin above the surroundings. */
  readonly heatLoss: WattsPerMetreKelvin;
  /** Of a motorised valve, open, at the reference flow of 15 l/min. */
  readonly valveDrop: Pascals;
  /** Time a motorised valve takes to travel. */
  readonly valveTravel: Seconds;
  /** Whatever else stands in the way of the coil, at the reference flow of 15 l/min. */
  readonly coilBranchDrop: Pascals;
}

export interface Circulator {
  readonly kind: 'curve' | 'constantHead';
  /** Head without flow. */
  readonly shutOffHead: Metres;
  /** Flow without head. */
  readonly largestFlow: CubicMetresPerSecond;
  /** Head kept, as far as the curve allows. */
  readonly setHead: Metres;
}
