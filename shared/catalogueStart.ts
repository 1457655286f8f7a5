import type { CatalogueEntry } from './catalogue.ts';
import { catalogueFromCells } from './codec/catalogue.ts';

// What a catalogue begins with. All of it is invented, in round figures of common practice, no source; no maker's goods.

const boilers = [
  [
    'name',
    'source',
    'boiler.outputKilowatts',
    'boiler.minimumOutputKilowatts',
    'boiler.waterContentLitres',
    'boiler.minimumOffMinutes',
    'boiler.pressureDropKilopascals',
    'boiler.efficiencyShiftPercent',
  ],
  ['Boiler of 12 kW that turns down to 2', 'invented', '12', '2', '4', '3', '20', '0'],
  ['Boiler of 24 kW that turns down to 5', 'invented', '24', '5', '6', '3', '25', '0'],
  ['Boiler of 35 kW that turns down to 8', 'invented', '35', '8', '8', '3', '30', '0'],
  ['Old boiler of 18 kW, on or off', 'invented', '18', '18', '20', '0', '5', '-15'],
];

const coils = [
  [
    'name',
    'source',
    'coil.given',
    'coil.lengthMetres',
    'coil.tubeOutsideMillimetres',
    'coil.tubeWallMillimetres',
    'coil.tubeMaterial',
    'coil.coilDiameterMetres',
  ],
  ['Plain coil, 7 m of 22 mm copper', 'invented', 'geometry', '7', '22', '0.8', 'copper', '0.35'],
  ['Plain coil, 12 m of 22 mm copper', 'invented', 'geometry', '12', '22', '0.8', 'copper', '0.35'],
  ['Long coil, 18 m of 22 mm copper', 'invented', 'geometry', '18', '22', '0.8', 'copper', '0.35'],
  [
    'Long coil, 20 m of 25 mm stainless',
    'invented',
    'geometry',
    '20',
    '25',
    '0.8',
    'stainless',
    '0.4',
  ],
];

const cylinders = [
  [
    'name',
    'source',
    'cylinder.supply',
    'cylinder.volumeLitres',
    'cylinder.heightMetres',
    'cylinder.wallMaterial',
    'cylinder.lossFrom',
    'cylinder.standingLossKilowattHoursPerDay',
    'cylinder.declaredAt',
    'coil.given',
    'coil.bottomMetres',
    'coil.topMetres',
    'coil.lengthMetres',
    'coil.tubeOutsideMillimetres',
  ],
  row('Vented cylinder of 120 litres', 'vented', '120', '0.9', 'copper', '1.9', '0.1', '0.4', '6'),
  row(
    'Unvented cylinder of 180 litres',
    'unvented',
    '180',
    '1.2',
    'stainless',
    '1.5',
    '0.1',
    '0.5',
    '12',
  ),
  row(
    'Unvented cylinder of 250 litres',
    'unvented',
    '250',
    '1.6',
    'stainless',
    '1.9',
    '0.1',
    '0.6',
    '16',
  ),
  row(
    'Unvented cylinder of 300 litres, fast',
    'unvented',
    '300',
    '1.8',
    'stainless',
    '2.2',
    '0.1',
    '0.9',
    '24',
  ),
];

function row(
  name: string,
  supply: string,
  litres: string,
  height: string,
  wall: string,
  loss: string,
  bottom: string,
  top: string,
  tube: string,
): readonly string[] {
  return [
    name,
    'invented',
    supply,
    litres,
    height,
    wall,
    'declared',
    loss,
    '45',
    'geometry',
    bottom,
    top,
    tube,
    '22',
  ];
}

/** The entries a catalogue begins with. */
export function startingCatalogue(): readonly CatalogueEntry[] {
  return [boilers, coils, cylinders].flatMap((table) => {
    const read = catalogueFromCells(table);
    if ('problems' in read) throw new Error(read.problems.map(({ message }) => message).join(' '));
    return read.entries;
  });
}
