import { arrangementOf } from '../../shared/arrangements.ts';
import type { Variant } from '../../shared/variant.ts';
import {
  column,
  coilLevels,
  type PlantPlan,
  type ValvePlace,
  valveKind,
  zigzag,
} from './plantPlan.ts';

/** The plant from left to right: boiler, cylinder, rooms, between a flow pipe above and a return pipe below. */
export function widePlan(variant: Variant, width: number): PlantPlan {
  const heated = arrangementOf(variant.heating.arrangement).heated;
  const flow = 40;
  const back = 268;
  const riser = 74;
  const boiler = { left: 0.5, right: 132, top: 92, bottom: 216 };
  // room for the numbers left and right of the cylinder, what is left over goes between the parts
  const spare = Math.max(0, width - (heated ? 640 : 470)) / 4;
  const tee = 200 + spare * 0.8;
  const cylinder = { left: tee + 96 + spare * 0.3, right: 0, top: 72, bottom: 244 };
  cylinder.right = cylinder.left + 74 + Math.min(26, spare * 0.3);
  const level = (share: number) => cylinder.bottom - share * (cylinder.bottom - cylinder.top);
  const { coils, into, out } = coilLevels(variant);
  const [inlet, outlet] = [level(into), level(out)];
  // water that comes in at the bottom crosses what goes out above it
  const rise = inlet > outlet ? tee + 16 : tee;
  const start = cylinder.left + 10;
  const end = cylinder.right - 10;
  const house = { left: width - 166 - spare * 1.1, right: width - 1, top: 92, bottom: 244 };
  const radiator = {
    left: house.left + 14 + spare * 0.15,
    right: house.left + 54 + spare * 0.4,
    top: 136,
    bottom: 204,
  };
  const drop = house.left - 16;
  const middle = (house.left + house.right) / 2;
  const names = cylinder.right + 14;
  const rowHeight = 25;
  return {
    isWide: true,
    height: 300,
    boiler,
    flame: { x: 22, y: 124 },
    burnerWord: { x: 40, y: 118, anchor: 'start' },
    pipes: {
      common: [
        `M${riser} ${boiler.top}V${flow}H${tee}`,
        `M${tee} ${back}H${riser}V${boiler.bottom}`,
      ],
      coil: [
        `M${tee} ${flow}V${inlet}H${cylinder.left}`,
        `M${cylinder.left} ${outlet}H${rise}V${back}H${tee}`,
      ],
      radiators: heated
        ? [
            `M${tee} ${flow}H${drop}V${radiator.top + 8}H${radiator.left}`,
            `M${radiator.left} ${radiator.bottom - 8}H${drop}V${back}H${tee}`,
          ]
        : [],
    },
    pump: { x: (riser + tee) / 2 + 34, y: back, turn: 180 },
    cylinder,
    level,
    stubs: [`M${cylinder.left} ${inlet}H${start}`, `M${start} ${outlet}H${cylinder.left}`],
    windings: coils.map((coil) =>
      zigzag(start, end, level(coil.top), level(coil.bottom), 'oneSide'),
    ),
    sensor: {
      x: cylinder.right,
      y: level(Math.min(1, variant.stat.sensorHeight / variant.cylinder.height)),
    },
    heater: {
      x: cylinder.right,
      y: level(Math.min(1, variant.immersion.height / variant.cylinder.height)),
    },
    house: heated
      ? {
          path: `M${house.left} ${house.bottom}V${house.top}L${middle} ${house.top - 34}L${house.right} ${house.top}V${house.bottom}Z`,
          radiator,
        }
      : null,
    valves: valvesOf(variant, tee, flow, inlet),
    numbers: {
      ...column(
        [
          ['fuel', 158],
          ['boilerHeat', 184],
        ],
        12,
        'start',
        { top: 140, bottom: 214 },
        rowHeight,
      ),
      flow: { x: riser + 10, y: flow - 17, anchor: 'start' },
      flowTarget: { x: riser + 10, y: flow + 17, anchor: 'start' },
      returnTemperature: { x: riser + 10, y: back + 17, anchor: 'start' },
      ...column(
        [
          ['coilInlet', inlet - 16],
          ['coilFlow', (inlet + outlet) / 2],
          ['coilOutlet', outlet + 16],
        ],
        cylinder.left - 8,
        'end',
        { top: 60, bottom: back - 2 },
        rowHeight,
      ),
      ...column(
        [
          ...(variant.draw.volume > 0 ? ([['drawFlow', cylinder.top - 8]] as const) : []),
          ['top', cylinder.top + 14],
          ['sensor', level(variant.stat.sensorHeight / variant.cylinder.height)],
          ...(variant.immersion.used === 'no'
            ? []
            : ([
                ['immersionHeat', level(variant.immersion.height / variant.cylinder.height)],
              ] as const)),
          ['coilHeat', (inlet + outlet) / 2],
          ['bottom', cylinder.bottom - 8],
        ],
        names,
        'start',
        { top: 52, bottom: back - 2 },
        rowHeight,
      ),
      ...(heated
        ? {
            ...column(
              [
                ['radiatorFlow', 118],
                ['radiatorHeat', 150],
                ['radiator', 176],
                ['air', 226],
              ],
              radiator.right + 10,
              'start',
              { top: 100, bottom: 242 },
              rowHeight,
            ),
            outside: { x: house.right - 2, y: 30, anchor: 'end' as const },
          }
        : {}),
    },
  };
}

/** One three-port valve, or one valve in each circuit. */
function valvesOf(variant: Variant, tee: number, flow: number, inlet: number): ValvePlace[] {
  const upright = Math.min(flow + 46, inlet - 14);
  const kind = valveKind(variant);
  if (kind === 'zones') {
    return [
      {
        x: tee,
        y: upright,
        isUpright: true,
        opens: 'coil',
        word: { x: tee - 12, y: upright, anchor: 'end' },
      },
      {
        x: tee + 44,
        y: flow,
        isUpright: false,
        opens: 'radiators',
        word: { x: tee + 34, y: flow - 16, anchor: 'start' },
      },
    ];
  }
  if (kind === 'none') return [];
  return [
    {
      x: tee,
      y: flow,
      isUpright: false,
      opens: kind === 'twoPort' ? 'coil' : 'either',
      word: { x: tee + 4, y: flow - 16, anchor: 'start' },
    },
  ];
}
