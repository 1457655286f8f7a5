import { TOLERANCE } from '../../sim/run/simulate.ts';
import { convergenceVariants, referenceRecovery, recoveryAt } from '../make/convergence.ts';

// Recovery time against layers and tolerance. Prints a table; `tests/sim/run/convergence.test.ts`
// holds the half per cent on fewer points.

const LAYERS = [12, 24, 36, 48, 72, 96, 144, 192];
const TOLERANCES = [1e-2, 1e-3, TOLERANCE, 1e-4, 1e-5, 1e-6, 1e-7];

let worst = 0;
for (const [name, variant] of convergenceVariants) {
  const finest = referenceRecovery(variant);
  console.log(`\n${name}: converged ${(finest / 60).toFixed(3)} min (192 layers, 1e-6 K)`);
  console.log(`layers at ${TOLERANCE} K minutes   off by %    calls`);
  for (const layers of LAYERS) line(String(layers), recoveryAt(variant, layers, TOLERANCE), finest);
  console.log('kelvins, 48 layers minutes   off by %    calls');
  for (const tolerance of TOLERANCES) {
    line(tolerance.toExponential(), recoveryAt(variant, 48, tolerance), finest);
  }
  worst = Math.max(worst, Math.abs(recoveryAt(variant, 48, TOLERANCE).recovery / finest - 1));
}
const verdict = worst < 0.005 ? 'within' : 'NOT within';
console.log(
  `\nThe default, 48 layers and ${TOLERANCE} K, is at worst ${(worst * 100).toFixed(3)} % off: ${verdict} 0.5 %.`,
);

function line(name: string, found: { recovery: number; calls: number }, finest: number): void {
  const off = (100 * (found.recovery / finest - 1)).toFixed(3);
  console.log(
    `${name.padEnd(17)}${(found.recovery / 60).toFixed(3).padStart(9)}${off.padStart(11)}${String(found.calls).padStart(9)}`,
  );
}
