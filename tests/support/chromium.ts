import { existsSync } from 'node:fs';
import { mkdir, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/**
 * The Chromium that the tests drive: CHROMIUM_PATH, else one installed on this machine, else the
 * packaged one, unpacked into node_modules. REHEAT_BENCH_CHROMIUM=packaged goes straight to the last.
 */
export async function chromiumPath(): Promise<string> {
  if (process.env.REHEAT_BENCH_CHROMIUM === 'packaged') return unpackedChromium();
  const named = process.env.CHROMIUM_PATH;
  if (named) return named;
  return usualPlaces.find((place) => existsSync(place)) ?? unpackedChromium();
}

/** Unpacks the packaged Chromium (Linux on x64) once, with the libraries and fonts it needs. */
async function unpackedChromium(): Promise<string> {
  if (process.platform !== 'linux' || process.arch !== 'x64') {
    throw new Error('no Chromium found; install one, or name its program in CHROMIUM_PATH');
  }
  const folder = fileURLToPath(new URL('../../node_modules/.cache/chromium', import.meta.url));
  const ready = join(folder, 'ready');
  if (!existsSync(ready)) {
    await rm(folder, { recursive: true, force: true });
    await mkdir(folder, { recursive: true });
  }
  // The package unpacks to TMPDIR, and brings its own libraries only where it takes this for a
  // hosted function; both are read while it is imported.
  const before = {
    TMPDIR: process.env.TMPDIR,
    AWS_LAMBDA_JS_RUNTIME: process.env.AWS_LAMBDA_JS_RUNTIME,
  };
  Object.assign(process.env, { TMPDIR: folder, AWS_LAMBDA_JS_RUNTIME: 'nodejs22.x' });
  try {
    const path = await (await import('@sparticuz/chromium')).default.executablePath();
    if (!existsSync(ready)) {
      // its own fonts.conf names another folder, and then any page with an input crashes
      await writeFile(join(folder, 'fonts', 'fonts.conf'), fontsFile(folder));
      await writeFile(ready, '');
    }
    return path;
  } finally {
    for (const [key, value] of Object.entries(before)) {
      if (value === undefined) delete process.env[key];
      else process.env[key] = value;
    }
  }
}

/** A fontconfig file for the fonts that come with the packaged Chromium. */
function fontsFile(folder: string): string {
  return `<?xml version="1.0"?>
<!DOCTYPE fontconfig SYSTEM "fonts.dtd">
<fontconfig><dir>${folder}/fonts</dir><cachedir>${folder}/fonts-cache</cachedir></fontconfig>
`;
}

/** Start options that let Chromium run without a display, as root, and without the network. */
export const chromiumArguments = [
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-dev-shm-usage',
];

const usualPlaces = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
];
