/** Builds the page as it stands before it is looked at; the program itself comes from `npm run build`. */
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

export default async function setup(): Promise<void> {
  if (!existsSync(at('dist/main/roastcall.js')))
    throw new Error('dist is not built; run npm run build first');
  await build({ configFile: at('src/page/vite.config.ts'), logLevel: 'error' });
}
