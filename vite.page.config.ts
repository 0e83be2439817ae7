import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

/** How the page is built: plain files next to index.html, nothing inline, so that the strict content policy holds. */
export default defineConfig({
  root: fileURLToPath(new URL('renderer', import.meta.url)),
  base: './',
  publicDir: false,
  plugins: [react()],
  build: {
    outDir: fileURLToPath(new URL('dist/page', import.meta.url)),
    emptyOutDir: true,
    target: 'chrome130',
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 1500,
  },
});
