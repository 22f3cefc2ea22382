import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { defineConfig } from 'vite';

const root = join(import.meta.dirname, '../..');
/** Packages that stay packages: one carries a native part, `vite` builds, the others read files that lie beside them. */
const packages = ['better-sqlite3', 'manifold-3d', 'pdfkit', 'replicad-opencascadejs', 'vite'];
const external = [...packages, /^node:/, ...builtinModules];

/** A name of its own for each build (this file is read again for each environment): a running program gets the worker it was built with. */
const worker = `worker-${Math.round(performance.timeOrigin).toString(36)}`;

/** A script with what it loads later, in files beside it. */
const script = (name: string, source: string, { emptyOutDir }: { emptyOutDir: boolean }) => ({
  consumer: 'server' as const,
  resolve: { noExternal: true as const, external: packages },
  build: {
    outDir: 'app/dist/launch',
    emptyOutDir,
    target: 'node24',
    minify: false,
    rolldownOptions: {
      input: { [name]: join(root, source) },
      external,
      // English is there from the first line on; the other languages are read when they are chosen.
      checks: { ineffectiveDynamicImport: false },
      output: { format: 'es' as const, entryFileNames: '[name].js', chunkFileNames: '[name]-[hash].js' },
    },
  },
});

/** The program that serves the page to a browser, and its worker: a few files, which load in half the time of the sources. */
export default defineConfig({
  root,
  publicDir: false,
  define: { BUILT_WORKER: JSON.stringify(`${worker}.js`) },
  environments: {
    program: script('start-built', 'app/launch/start-built.ts', { emptyOutDir: true }),
    worker: script(worker, 'app/background/worker.ts', { emptyOutDir: false }),
  },
  builder: {
    async buildApp(builder) {
      await builder.build(builder.environments.program!);
      await builder.build(builder.environments.worker!);
    },
  },
});
