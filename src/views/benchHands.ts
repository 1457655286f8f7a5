import { type Preset, presetVariant } from '../../shared/preset.ts';
import type { FieldPath, Variant } from '../../shared/variant.ts';
import type { Bench } from '../state/Bench.svelte.ts';
import type { Entries } from '../state/Entries.svelte.ts';
import type { Run } from '../state/Run.svelte.ts';
import { sameSettings } from '../state/settingsText.ts';

/** What can be done to the bench from its drawings, figures and lists. */
export interface Hands {
  /** The handle of the sensor is held at a height in metres, let go there, or put back. */
  readonly sensorMoved: (height: number, phase: 'move' | 'commit' | 'cancel') => void;
  readonly set: (path: FieldPath, value: number) => void;
  readonly start: (preset: Preset) => void;
  /** Puts a variant beside the one in hand, or takes it away again. */
  readonly show: (name: string, variant: Variant) => void;
}

/** @param entries  gives what checks the settings, or null while it is not there */
export function handsOn(bench: Bench, run: Run, entries: () => Entries | null): Hands {
  return {
    sensorMoved(height, phase) {
      if (phase === 'move') {
        if (!bench.isMoving) run.hold();
        entries()?.forget('stat.sensorHeight');
        bench.move('stat.sensorHeight', height);
        return;
      }
      run.release();
      if (phase === 'commit') bench.drop('stat.sensorHeight', height);
      else bench.cancel();
    },
    set(path, value) {
      const checked = entries();
      if (checked) checked.set(path, value);
      else bench.set(path, value);
    },
    start(preset) {
      entries()?.forget();
      bench.replace(`example ${preset.title}`, presetVariant(preset));
    },
    show(name, variant) {
      const place = placeBeside(bench, variant);
      if (place === null) bench.add(`variant ${bench.nextLetter}`, { ...variant, name }, false);
      else bench.remove(place);
    },
  };
}

/** Place of the variant with the same settings that is not in hand, or null. */
export function placeBeside(bench: Bench, variant: Variant): number | null {
  const place = bench.placed.findIndex(
    (each, index) => index !== bench.inHand && sameSettings(each.variant, variant),
  );
  return place === -1 ? null : place;
}
