import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { coilFrictionRecord } from './coilFriction.ts';
import { churchillChuRecord } from './coilOutside.ts';
import { conductionRecord } from './conduction.ts';
import { criticalReynoldsRecord } from './criticalReynolds.ts';
import { curvedLaminarRecord, curvedTurbulentRecord } from './curvedTube.ts';
import { exchangeRecord } from './exchange.ts';
import { filmCoefficientRecord } from './filmCoefficient.ts';
import { viscosityRecord } from './iapwsWater.ts';
import { mixedShareRecord } from './mixedLitres.ts';
import { mixingRecord } from './mixing.ts';
import { overallRecord } from './overallCoefficient.ts';
import { pipeEndRecord } from './pipeLoss.ts';
import { radiatorRecord } from './radiator.ts';
import { rayleighRecord } from './rayleigh.ts';
import { scaleRecord } from './scale.ts';
import { classLimitRecord, guideLimitRecord, standingLossRecord } from './standingLoss.ts';
import { heatUpTimeRecord, storedHeatRecord, tradeHeatUpTimeRecord } from './storedHeat.ts';
import { tubeWallRecord } from './tubeWall.ts';

/** Every relation that can be printed, in the order the heat travels. */
export const records: readonly ClosureRecord[] = [
  storedHeatRecord,
  heatUpTimeRecord,
  tradeHeatUpTimeRecord,
  pipeEndRecord,
  exchangeRecord,
  overallRecord,
  filmCoefficientRecord,
  criticalReynoldsRecord,
  coilFrictionRecord,
  curvedLaminarRecord,
  curvedTurbulentRecord,
  tubeWallRecord,
  scaleRecord,
  rayleighRecord,
  churchillChuRecord,
  viscosityRecord,
  mixingRecord,
  conductionRecord,
  standingLossRecord,
  guideLimitRecord,
  classLimitRecord,
  mixedShareRecord,
  radiatorRecord,
];
