/** Builds the page into dist/page. Fonts and all else ship with it; nothing is fetched from elsewhere. */
import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { defineConfig, type Plugin } from 'vite';

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** The service worker learns which files make the shell, and changes its name when one of them does. */
const shellList: Plugin = {
  name: 'shell-list',
  generateBundle(_options, bundle) {
    const files = ['/', ...Object.keys(bundle).filter((name) => name !== 'index.html')];
    const list = files.map((name) => (name.startsWith('/') ? name : `/${name}`)).sort();
    const mark = createHash('sha256').update(list.join()).digest('hex').slice(0, 12);
    const source = readFileSync(here('worker.js'), 'utf8')
      .replace(/(['"])shell-files\1/, JSON.stringify(list))
      .replace('shell-mark', mark);
    if (/shell-(files|mark)/.test(source)) throw new Error('the worker has no place for its list');
    this.emitFile({ type: 'asset', fileName: 'worker.js', source });
  },
};

export default defineConfig({
  root: here('.'),
  base: '/',
  publicDir: here('public'),
  build: {
    outDir: here('../../dist/page'),
    emptyOutDir: true,
    target: 'es2022',
    // Everything stays a file of its own: the content security policy allows no data addresses.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
  },
  plugins: [shellList],
});
