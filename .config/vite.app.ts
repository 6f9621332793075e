import { join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig, type Plugin } from 'vite';
import type { Rolldown } from 'vite';

type CodeSplittingNameFunction = Rolldown.CodeSplittingNameFunction;

const top = join(import.meta.dirname, '..');

/**
 * The solver asks for Node's own loader where it runs on Node. In the page it never does, and there
 * is no such module to be had.
 */
const noNodeInPage: Plugin = {
  name: 'no-node-in-page',
  enforce: 'pre',
  resolveId: (id) => (id === 'node:module' ? '\0no-node-in-page' : null),
  load: (id) => (id === '\0no-node-in-page' ? 'export const createRequire = undefined;' : null),
};

/**
 * All that the start cannot run without lies in one file: some fifty small ones are asked for one
 * after another, and each is packed by itself.
 */
function startInOne(): CodeSplittingNameFunction {
  const entry = join(top, 'app/start.tsx');
  let start: Set<string> | null = null;
  return (id, graph) => {
    if (!start) {
      start = new Set([entry]);
      for (const module of start)
        for (const next of graph.getModuleInfo(module)?.importedIds ?? []) start.add(next);
    }
    return id !== entry && start.has(id) ? 'start' : null;
  };
}

/** How long a build takes is the machine's affair and no fault of what is built. */
const checks = { bundlerTimings: false };

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
  worker: { format: 'es', plugins: () => [noNodeInPage], rolldownOptions: { checks } },
  build: {
    outDir: join(top, '.build/app'),
    emptyOutDir: true,
    target: 'chrome140',
    // The page names all that its start needs, so that it comes at once and not after the first part
    // was read; what is brought on demand names nothing.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_file, files, { hostType }) => (hostType === 'html' ? files : []),
    },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 1200,
    rolldownOptions: {
      checks,
      output: { codeSplitting: { groups: [{ name: startInOne() }] } },
    },
  },
});
