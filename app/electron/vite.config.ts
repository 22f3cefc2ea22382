import { builtinModules } from 'node:module';
import { defineConfig } from 'vite';

const root = new URL('../..', import.meta.url).pathname;
/** better-sqlite3 carries a native part and must stay a package of its own, unpacked from the archive. */
const external = ['electron', 'better-sqlite3', /^node:/, ...builtinModules];

/** Electron's two scripts: the program as an ES module, the preload as CommonJS, which a sandboxed page needs. */
const script = (name: string, format: 'es' | 'cjs', fileName: string) => ({
  consumer: 'server' as const,
  resolve: { noExternal: true as const, external: ['electron', 'better-sqlite3'] },
  build: {
    outDir: 'app/dist/electron',
    emptyOutDir: false,
    target: 'node24',
    minify: false,
    sourcemap: true,
    rolldownOptions: {
      input: { [name]: `${root}app/electron/${name}.ts` },
      external,
      output: { format, entryFileNames: fileName },
    },
  },
});

export default defineConfig({
  root,
  publicDir: false,
  environments: {
    main: script('main', 'es', 'main.js'),
    preload: script('preload', 'cjs', 'preload.cjs'),
  },
  builder: {
    async buildApp(builder) {
      await builder.build(builder.environments.main!);
      await builder.build(builder.environments.preload!);
    },
  },
});
