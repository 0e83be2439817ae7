import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';
import { licenceList } from './scripts/dependencies/licence-list.ts';
import { firstChunk } from './scripts/first-chunk.ts';
import { preloadMain } from './scripts/preload-main.ts';

const root = fileURLToPath(new URL('.', import.meta.url));
const inApp = (file: string): string => fileURLToPath(new URL(`renderer/app/${file}`, import.meta.url));
/** What goes along with the program: the page shows it without asking anybody. */
const madeOf = licenceList(root)
  .lines.filter(({ isShipped }) => isShipped)
  .map(({ name, version, licence }) => ({ name, version, licence }));

/** How the page is built: plain files next to index.html, nothing inline, so that the strict content policy holds. */
export default defineConfig({
  root: fileURLToPath(new URL('renderer', import.meta.url)),
  base: './',
  publicDir: false,
  define: { __MADE_OF__: JSON.stringify(madeOf) },
  plugins: [react(), preloadMain('renderer/app/main.tsx')],
  build: {
    outDir: fileURLToPath(new URL('dist/page', import.meta.url)),
    emptyOutDir: true,
    target: 'chrome130',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: { output: { codeSplitting: { groups: [firstChunk(inApp('boot.ts'), inApp('main.tsx'))] } } },
    chunkSizeWarningLimit: 1500,
  },
});
