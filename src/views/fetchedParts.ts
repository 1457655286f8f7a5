let fetched: Promise<typeof import('./settingsParts.ts')> | undefined;

/** What takes and checks what is typed: fetched once, when it is first asked for. */
export function settingsParts(): Promise<typeof import('./settingsParts.ts')> {
  fetched ??= import('./settingsParts.ts');
  return fetched;
}
