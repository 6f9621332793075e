import { join } from 'node:path';
import { defineConfig } from 'vite';

const top = join(import.meta.dirname, '..');

/**
 * What runs on Node, in two passes. The program's entry, the loopback service and the command line
 * are ES modules. The preload is one CommonJS file (`--mode preload`): a sandboxed preload may load
 * nothing but 'electron', so it must not share a chunk with anything. The solver finds its code beside
 * its own package, so the command line takes it from there; the page has a copy of its own.
 */
export default defineConfig(({ mode }) => {
  const isPreload = mode === 'preload';
  return {
    root: top,
    publicDir: false as const,
    logLevel: 'warn' as const,
    ssr: { noExternal: true as const, external: ['electron', 'highs'] },
    build: {
      ssr: true,
      target: 'node20',
      minify: false,
      outDir: join(top, '.build/main'),
      emptyOutDir: !isPreload,
      rolldownOptions: {
        input: isPreload
          ? { preload: join(top, 'main/preload.ts') }
          : {
              entry: join(top, 'main/entry.ts'),
              loopback: join(top, 'main/loopback.ts'),
              command: join(top, 'main/command.ts'),
            },
        output: isPreload
          ? { format: 'cjs' as const, entryFileNames: '[name].cjs' }
          : { format: 'es' as const, entryFileNames: '[name].js', chunkFileNames: '[name].js' },
      },
    },
  };
});
