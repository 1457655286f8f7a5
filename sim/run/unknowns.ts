import { incomingCold } from '../../shared/coldWater.ts';
import { mountingOf } from '../../shared/mounting.ts';
import { exponential, logarithm } from '../../shared/portableMaths.ts';
import type { UnknownKey } from '../../shared/spread.ts';
import { COLDEST, unknownOfCoil, unknownsOf } from '../../shared/unknowns.ts';
import type { Share } from '../../shared/units.ts';
import type { Coil, Variant } from '../../shared/variant.ts';
import { withRatedAreas } from '../plant/coilTube.ts';
import { makePlant, type Plant, waterOf } from '../plant/plant.ts';
import { primaryFlows, type PrimaryFlows } from '../plant/primaryFlows.ts';

/**
 * Makes the plants that an installation may be, given what is not known of it for certain. Each range is a triangle: what
 * is set is likeliest and the ends are not reached, as for a range that someone would put their name to. What is set by a
 * factor (scale, lag) is a triangle of its logarithm, so that half is as likely as twice; scale on a coil set as clean is
 * likeliest none.
 */
// source: a triangle for a range whose middle is likelier than its ends, JCGM 100, 4.3.9; from memory
export class PossiblePlants {
  /** What is unknown here, in a fixed order. */
  readonly keys: readonly UnknownKey[];
  readonly #variant: Variant;
  readonly #flows: PrimaryFlows;
  /** Of the conductance, either way. */
  readonly #coil: Share;

  constructor(variant: Variant) {
    const water = waterOf(variant);
    this.#coil = variant.unknowns[unknownOfCoil(variant)];
    this.keys = [...new Set(unknownsOf(variant).map(({ key }) => key))];
    // found once: the area of a rated coil and the flows of the network
    this.#variant = withRatedAreas(variant, water);
    this.#flows = primaryFlows(this.#variant, water);
  }

  /** One of them. @param at  where each unknown lies in its range, as a share of the cases below it; 0 to 1 */
  plant(at: (key: UnknownKey) => number): Plant {
    const variant = this.#variant;
    const { unknowns, draw, stat } = variant;
    const mounting = mountingOf(stat);
    const flow = 1 + unknowns.primaryFlow * evenTriangle(at('primaryFlow'));
    const scaled = <Either extends Coil>(coil: Either): Either => ({
      ...coil,
      scaleThickness:
        coil.scaleThickness > 0
          ? coil.scaleThickness * factor(unknowns.scale, at('scale'))
          : unknowns.hiddenScale * fallingTriangle(at('scale')),
    });
    return makePlant(
      {
        ...variant,
        coil: scaled(variant.coil),
        secondCoil: scaled(variant.secondCoil),
        draw: {
          ...draw,
          coldFrom: 'typed',
          incomingCold: Math.max(
            COLDEST,
            incomingCold(draw) + unknowns.cold * evenTriangle(at('cold')),
          ),
        },
        stat: {
          ...stat,
          mounting: 'asTyped',
          airShare: mounting.airShare,
          lag: mounting.lag * factor(unknowns.lag, at('lag')),
        },
      },
      { flows: times(this.#flows, flow), coil: 1 + this.#coil * evenTriangle(at('coil')) },
    );
  }
}

/** From −1 to 1, likeliest 0. @param share  of the cases below it */
function evenTriangle(share: number): number {
  return share < 0.5 ? Math.sqrt(2 * share) - 1 : 1 - Math.sqrt(2 * (1 - share));
}

/** From 0 to 1, likeliest 0. */
function fallingTriangle(share: number): number {
  return 1 - Math.sqrt(1 - share);
}

/** From so many times less to so many times more, likeliest 1. @param range  0 for what is known */
function factor(range: Share, share: number): number {
  return exponential(logarithm(1 + range) * evenTriangle(share));
}

function times(flows: PrimaryFlows, by: number): PrimaryFlows {
  return {
    coilAlone: flows.coilAlone * by,
    radiatorsAlone: flows.radiatorsAlone * by,
    coilShared: flows.coilShared * by,
    radiatorsShared: flows.radiatorsShared * by,
  };
}
