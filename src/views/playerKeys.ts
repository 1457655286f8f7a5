import type { Attachment } from 'svelte/attachments';

/** What the keys of the player do. */
interface PlayerKeys {
  readonly onrun: () => void;
  readonly onstep: () => void;
  readonly onstart: () => void;
  /** @param way  0, 1 or 2 */
  readonly onthrow: (way: number) => void;
}

/** Hears the keys of the player while the focus is inside; what a control does with a key by itself it goes on doing. */
export function playerKeys({ onrun, onstep, onstart, onthrow }: PlayerKeys): Attachment<Element> {
  const what = ({ key, target }: KeyboardEvent): (() => void) | null => {
    const control = target instanceof Element ? target.closest('button, select, input') : null;
    if (control instanceof HTMLSelectElement) return null;
    if (key === ' ') return control instanceof HTMLButtonElement ? null : onrun;
    if (key === 'ArrowRight') return control instanceof HTMLInputElement ? null : onstep;
    if (key === 'Home') return onstart;
    if (/^[123]$/.test(key)) return () => onthrow(Number(key) - 1);
    return null;
  };
  const hear = (event: Event) => {
    const pressed = event as KeyboardEvent;
    if (pressed.ctrlKey || pressed.metaKey || pressed.altKey) return;
    const act = what(pressed);
    if (act === null) return;
    pressed.preventDefault();
    act();
  };
  return (element) => {
    element.addEventListener('keydown', hear);
    return () => element.removeEventListener('keydown', hear);
  };
}
