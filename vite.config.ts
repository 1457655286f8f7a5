import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { svelte } from '@sveltejs/vite-plugin-svelte';
import { defineConfig, type Plugin } from 'vite';

/** The name, licence and licence text of the package in a folder of node_modules. */
function licenceOf(folder: string): string {
  const { name, version, license } = JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
  const file = readdirSync(folder).find((entry) => /^licen[cs]e(\.|$)/i.test(entry));
  if (file === undefined) throw new Error(`${name} has no licence file to ship`);
  return `${name} ${version} (${license})\n\n${readFileSync(join(folder, file), 'utf8').trim()}\n`;
}

/** Writes licences.txt: the licence of every package with code in the page or in its worker. */
function licences(): { page: Plugin; worker: Plugin } {
  const folders = new Set<string>();
  const collect = (modules: string[]) => {
    for (const id of modules) {
      const folder = /^\0?(.*\/node_modules\/(?:@[^/]+\/)?[^/]+)\//.exec(id)?.[1];
      if (folder !== undefined) folders.add(folder);
    }
  };
  const plugin = (name: string, write: boolean): Plugin => ({
    name,
    apply: 'build',
    generateBundle(_options, bundle) {
      for (const item of Object.values(bundle)) {
        if (item.type === 'chunk') collect(Object.keys(item.modules));
      }
      if (!write) return;
      const source = [...folders]
        .sort()
        .map(licenceOf)
        .join(`\n${'-'.repeat(72)}\n\n`);
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  });
  return { page: plugin('licences', true), worker: plugin('licences-worker', false) };
}

const { page, worker } = licences();
// on a slow machine the bundler says at length how long it took, which is nothing to put right
const quiet = { checks: { bundlerTimings: false } };
const root = dirname(fileURLToPath(import.meta.url));

export default defineConfig({
  root: 'src',
  base: './',
  publicDir: 'static',
  cacheDir: '../node_modules/.vite',
  plugins: [svelte({ configFile: false }), page],
  worker: { format: 'es', plugins: () => [worker], rolldownOptions: quiet },
  server: { host: '127.0.0.1', fs: { allow: [root] } }, // sim and shared lie outside src
  preview: { host: '127.0.0.1', port: 4173, strictPort: false },
  build: {
    outDir: '../dist',
    emptyOutDir: true,
    target: 'es2022',
    sourcemap: true,
    rolldownOptions: quiet,
  },
});
