import type { ClosureRecord } from '../../shared/closureRecord.ts';
import { airViscosityRecord } from './air.ts';
import {
  boilerEfficiencyRecord,
  condensingShareRecord,
  netFromGrossRecord,
} from './boilerEfficiency.ts';
import { coilFrictionRecord } from './coilFriction.ts';
import { churchillChuRecord } from './coilOutside.ts';
import { conductionRecord } from './conduction.ts';
import { tubeContentRecord } from './copperTube.ts';
import { coolDownRecord } from './coolDown.ts';
import { criticalReynoldsRecord } from './criticalReynolds.ts';
import { curvedLaminarFrictionRecord, curvedTurbulentFrictionRecord } from './curvedFriction.ts';
import { curvedLaminarRecord, curvedTurbulentRecord } from './curvedTube.ts';
import { longestReductionRecord, shortestReductionRecord } from './decimalReduction.ts';
import { dailyLossRecords, lossPowerRecords, tableLossRecord } from './declaredLoss.ts';
import { dutyRecord, offTimeRecord, onTimeRecord } from './cycling.ts';
import { exchangeRecord } from './exchange.ts';
import { filmCoefficientRecord } from './filmCoefficient.ts';
import { equivalentLengthRecord, quadraticDropRecord } from './fitting.ts';
import { loadFlowRecord, weatherFlowRecord } from './heatingCurve.ts';
import { houseCoolingRecord, houseTimeConstantRecord } from './houseCooling.ts';
import { householdUseRecords } from './householdUse.ts';
import { inletEddyRecords, inletRichardsonRecord } from './inletMixing.ts';
import { insulationRecords } from './insulationLoss.ts';
import { leadResistanceRecord } from './leadResistance.ts';
import { mixedShareRecord } from './mixedShare.ts';
import { mixingRecord } from './mixing.ts';
import { occupancyRecord } from './occupancy.ts';
import { hotShareRecord, outletBlendRecord } from './outletBlend.ts';
import { overallRecord } from './overallCoefficient.ts';
import { pipeFrictionRecord, pipePressureDropRecord } from './pipeFriction.ts';
import { pipeHeatLossRecord } from './pipeHeatLoss.ts';
import { pipeEndRecord } from './pipeLoss.ts';
import { circulatorRecord } from './pumpCurve.ts';
import { radiationRecord } from './radiation.ts';
import { platinumRecord } from './platinum.ts';
import { radiatorRecord } from './radiator.ts';
import { rayleighRecord } from './rayleigh.ts';
import { longestScaldRecord, shortestScaldRecord } from './scaldTime.ts';
import { scaleRecord } from './scale.ts';
import { classBoundRecord, classLimitRecord, guideLimitRecord } from './standingLoss.ts';
import { steinhartHartRecord } from './steinhartHart.ts';
import { heatUpTimeRecord, storedHeatRecord, tradeHeatUpTimeRecord } from './storedHeat.ts';
import { sufficientFlowRecord } from './sufficientFlow.ts';
import { thermistorResistanceRecord, thermistorTemperatureRecord } from './thermistor.ts';
import { tubeWallRecord } from './tubeWall.ts';
import { viscosityRecord } from './waterViscosity.ts';

/** Every relation that can be printed, in the order the heat travels. */
export const records: readonly ClosureRecord[] = [
  storedHeatRecord,
  heatUpTimeRecord,
  tradeHeatUpTimeRecord,
  boilerEfficiencyRecord,
  netFromGrossRecord,
  condensingShareRecord,
  onTimeRecord,
  offTimeRecord,
  dutyRecord,
  circulatorRecord,
  tubeContentRecord,
  pipePressureDropRecord,
  pipeFrictionRecord,
  equivalentLengthRecord,
  quadraticDropRecord,
  curvedLaminarFrictionRecord,
  curvedTurbulentFrictionRecord,
  pipeEndRecord,
  pipeHeatLossRecord,
  radiationRecord,
  airViscosityRecord,
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
  ...Object.values(dailyLossRecords),
  ...Object.values(lossPowerRecords),
  tableLossRecord,
  classBoundRecord,
  guideLimitRecord,
  classLimitRecord,
  ...Object.values(insulationRecords),
  coolDownRecord,
  inletRichardsonRecord,
  ...inletEddyRecords,
  mixedShareRecord,
  outletBlendRecord,
  hotShareRecord,
  occupancyRecord,
  ...householdUseRecords,
  shortestReductionRecord,
  longestReductionRecord,
  shortestScaldRecord,
  longestScaldRecord,
  thermistorResistanceRecord,
  thermistorTemperatureRecord,
  steinhartHartRecord,
  platinumRecord,
  leadResistanceRecord,
  radiatorRecord,
  sufficientFlowRecord,
  weatherFlowRecord,
  loadFlowRecord,
  houseTimeConstantRecord,
  houseCoolingRecord,
];
