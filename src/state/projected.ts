/**
 * Raises type, lines and contrast for a room, or puts them back. Asks for the whole screen, and does without where that is
 * refused. To be called only as the user asks for it.
 */
export function project(isOn: boolean): void {
  const root = document.documentElement;
  if (isOn) {
    root.dataset.projected = '';
    root.requestFullscreen?.().catch(() => {});
  } else {
    delete root.dataset.projected;
    if (document.fullscreenElement) document.exitFullscreen().catch(() => {});
  }
}
