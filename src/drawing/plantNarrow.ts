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

/** The plant from the top down: boiler, cylinder, rooms, between a flow pipe at the left and a return pipe at the right. */
export function narrowPlan(variant: Variant, width: number): PlantPlan {
  const heated = arrangementOf(variant.heating.arrangement).heated;
  const flow = 8;
  const back = width - 8;
  const boiler = { left: 0.5, right: width - 0.5, top: 1, bottom: 96 };
  const tee = 160;
  const middle = width / 2;
  const cylinder = { left: middle - 40, right: middle + 40, top: 184, bottom: 404 };
  const level = (share: number) => cylinder.bottom - share * (cylinder.bottom - cylinder.top);
  const { coils, into, out } = coilLevels(variant);
  const [inlet, outlet] = [level(into), level(out)];
  const [start, end] = [cylinder.left + 10, cylinder.right - 10];
  const rowHeight = 42;
  // under a low inlet there is no room for the number of the bottom
  const isLow = inlet > cylinder.bottom - 40;
  const left = flow + 10;
  const right = back - 10;
  const house = { left: 30, right: width - 30, top: 496, bottom: 632 };
  const radiator = { left: middle - 26, right: middle + 26, top: 548, bottom: 612 };
  const share = (height: number) => level(Math.min(1, height / variant.cylinder.height));
  return {
    isWide: false,
    height: heated ? 640 : 440,
    boiler,
    flame: { x: 20, y: 22 },
    burnerWord: { x: 36, y: 20, anchor: 'start' },
    pipes: {
      common: [`M${flow} ${boiler.bottom}V${tee}`, `M${back} ${tee}V${boiler.bottom}`],
      coil: [
        `M${flow} ${tee}V${inlet}H${cylinder.left}`,
        `M${cylinder.right} ${outlet}H${back}V${tee}`,
      ],
      radiators: heated
        ? [
            `M${flow} ${tee}V${radiator.top + 8}H${radiator.left}`,
            `M${radiator.right} ${radiator.bottom - 8}H${back}V${tee}`,
          ]
        : [],
    },
    pump: { x: back, y: 138, turn: 270 },
    cylinder,
    level,
    stubs: [`M${cylinder.left} ${inlet}H${start}`, `M${end} ${outlet}H${cylinder.right}`],
    windings: coils.map((coil) =>
      zigzag(start, end, level(coil.top), level(coil.bottom), 'bothSides'),
    ),
    sensor: { x: cylinder.right, y: share(variant.stat.sensorHeight) },
    heater: { x: cylinder.right, y: share(variant.immersion.height) },
    house: heated
      ? {
          path: `M${house.left} ${house.bottom}V${house.top}L${middle} ${house.top - 24}L${house.right} ${house.top}V${house.bottom}Z`,
          radiator,
        }
      : null,
    valves: valvesOf(variant, {
      flow,
      tee,
      inlet,
      wall: cylinder.left,
      beforeRooms: house.top - 30,
    }),
    numbers: {
      fuel: { x: 36, y: 66, anchor: 'start' },
      boilerHeat: { x: width - 14, y: 66, anchor: 'end' },
      flow: { x: left, y: 122, anchor: 'start' },
      flowTarget: { x: middle, y: 122, anchor: 'middle' },
      returnTemperature: { x: right - 8, y: 122, anchor: 'end' },
      // each pipe parts the numbers above it from those below
      ...column(
        [
          ['top', cylinder.top + 20],
          ...(variant.draw.volume > 0 ? ([['drawFlow', cylinder.top + 62]] as const) : []),
          ...(isLow ? ([['bottom', inlet - 64]] as const) : []),
          ['coilInlet', inlet - 25],
        ],
        left,
        'start',
        { top: cylinder.top - 20, bottom: inlet - 3 },
        rowHeight,
      ),
      ...column(
        [['coilFlow', inlet + 25], ...(isLow ? [] : ([['bottom', cylinder.bottom]] as const))],
        left,
        'start',
        { top: inlet + 3, bottom: house.top - 50 },
        rowHeight,
      ),
      ...column(
        [
          ['sensor', share(variant.stat.sensorHeight) - 20],
          ...(variant.immersion.used === 'no'
            ? []
            : ([['immersionHeat', share(variant.immersion.height)]] as const)),
          ['coilHeat', (inlet + outlet) / 2],
        ],
        right,
        'end',
        { top: cylinder.top - 20, bottom: outlet - 3 },
        rowHeight,
      ),
      coilOutlet: { x: right, y: outlet + 25, anchor: 'end' },
      ...(heated
        ? {
            radiatorFlow: { x: house.left + 8, y: radiator.top - 22, anchor: 'start' as const },
            radiator: { x: house.left + 8, y: radiator.top + 36, anchor: 'start' as const },
            radiatorHeat: { x: house.right - 8, y: radiator.top - 22, anchor: 'end' as const },
            air: { x: house.right - 8, y: radiator.top + 26, anchor: 'end' as const },
            outside: { x: right, y: house.top - 36, anchor: 'end' as const },
          }
        : {}),
    },
  };
}

/** One three-port valve, or one valve in each circuit. */
function valvesOf(
  variant: Variant,
  {
    flow,
    tee,
    inlet,
    wall,
    beforeRooms,
  }: Record<'flow' | 'tee' | 'inlet' | 'wall' | 'beforeRooms', number>,
): ValvePlace[] {
  const kind = valveKind(variant);
  if (kind === 'zones') {
    return [
      {
        x: wall - 24,
        y: inlet,
        isUpright: false,
        opens: 'coil',
        word: { x: wall - 8, y: inlet - 16, anchor: 'end' },
        isShort: true,
      },
      {
        x: flow,
        y: beforeRooms,
        isUpright: true,
        opens: 'radiators',
        word: { x: flow + 12, y: beforeRooms, anchor: 'start' },
      },
    ];
  }
  if (kind === 'none') return [];
  return [
    {
      x: flow,
      y: tee,
      isUpright: true,
      opens: kind === 'twoPort' ? 'coil' : 'either',
      word: { x: flow + 12, y: tee, anchor: 'start' },
    },
  ];
}
