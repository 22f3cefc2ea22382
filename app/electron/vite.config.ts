import { builtinModules } from 'node:module';
import { join } from 'node:path';
import { defineConfig } from 'vite';

const root = join(import.meta.dirname, '../..');
/** Packages that stay packages: one carries a native part, the others read files that lie beside them. */
const packages = ['electron', 'better-sqlite3', 'manifold-3d', 'pdfkit', 'replicad-opencascadejs'];
const external = [...packages, /^node:/, ...builtinModules];

/** A name of its own for each build (this file is read again for each environment): a running program gets the worker it was built with. */
const worker = `worker-${Math.round(performance.timeOrigin).toString(36)}.js`;

/** Each script, by the name under which it lies in the program's folder. */
const SCRIPTS: Readonly<Record<string, string>> = {
  main: 'app/electron/main.ts',
  worker: 'app/background/worker.ts',
  preload: 'app/electron/preload.ts',
};

/** Electron's three scripts: the program and its worker as ES modules, the preload as CommonJS, which a sandboxed page needs. */
const script = (name: string, format: 'es' | 'cjs', fileName: string) => ({
  consumer: 'server' as const,
  resolve: { noExternal: true as const, external: packages },
  build: {
    outDir: 'app/dist/electron',
    emptyOutDir: false,
    target: 'node24',
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: { [name]: join(root, SCRIPTS[name]!) },
      external,
      // English is there from the first line on; the other languages are read when they are chosen.
      checks: { ineffectiveDynamicImport: false },
      // The installers take what lies in this one folder.
      output: { format, entryFileNames: fileName, chunkFileNames: '[name]-[hash].js' },
    },
  },
});

export default defineConfig({
  root,
  publicDir: false,
  define: { BUILT_WORKER: JSON.stringify(worker) },
  environments: {
    main: script('main', 'es', 'main.js'),
    worker: script('worker', 'es', worker),
    preload: script('preload', 'cjs', 'preload.cjs'),
  },
  builder: {
    async buildApp(builder) {
      await builder.build(builder.environments.main!);
      await builder.build(builder.environments.worker!);
      await builder.build(builder.environments.preload!);
    },
  },
});
