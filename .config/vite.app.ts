import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const top = join(import.meta.dirname, '..');

/**
 * The page. Everything it loads is a file of its own (no inline scripts, no data: addresses), because
 * the content policy of main/page.ts allows nothing else.
 */
export default defineConfig({
  root: join(top, 'app'),
  base: './',
  publicDir: false,
  logLevel: 'warn',
  plugins: [react()],
  worker: { format: 'es' },
  build: {
    outDir: join(top, '.build/app'),
    emptyOutDir: true,
    target: 'chrome140',
    modulePreload: false,
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1500,
  },
});
