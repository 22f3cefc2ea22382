import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import react from '@vitejs/plugin-react';
import { defineConfig, type HtmlTagDescriptor, type Plugin } from 'vite';

const root = import.meta.dirname;
const CANVAS = /node_modules[\\/](konva|react-konva|react-reconciler|its-fine)[\\/]/;
/** Sheets, rosters and plans of holes, but for what the bench asks of them: where holes are, how tall letters are. */
const PAPERS = /[\\/]core[\\/](setout|show|roster|drilling)[\\/](?!drilled-places|drilling-wish|sheet-inks)/;
/** The first script and all that it needs. */
const FIRST =
  /renderer[\\/](first|client[\\/](prefetch|session-header)|route[\\/]addresses)\.ts|app[\\/]contract[\\/]session\.ts/;
const SHARED = /renderer[\\/](?!jobs|pages|shell)\w+[\\/]/;

/** The files of the pose model that the page may ask for: the script, both builds of its WebAssembly, one model. */
const FILES = [
  'pose.js',
  'pose_web.binarypb',
  'pose_landmark_full.tflite',
  'pose_solution_packed_assets.data',
  'pose_solution_packed_assets_loader.js',
  'pose_solution_simd_wasm_bin.js',
  'pose_solution_simd_wasm_bin.wasm',
  'pose_solution_wasm_bin.js',
  'pose_solution_wasm_bin.wasm',
];

/** Puts the pose model of `@mediapipe/pose` (Apache-2.0) beside the page, as files that are loaded only when asked for. */
function poseFiles(): Plugin {
  const folder = dirname(createRequire(import.meta.url).resolve('@mediapipe/pose/package.json'));
  return {
    name: 'pose-files',
    generateBundle() {
      for (const name of FILES)
        this.emitFile({ type: 'asset', fileName: `pose/${name}`, source: readFileSync(join(folder, name)) });
    },
  };
}

/**
 * Lets the browser fetch the program's own scripts and style sheets as soon as it reads the page. The first script, which is all that
 * the page names, imports them dynamically, so that it need not wait for them itself.
 */
function mainAtOnce(): Plugin {
  return {
    name: 'main-at-once',
    transformIndexHtml: {
      order: 'post',
      handler(html, { bundle = {} }) {
        const chunks = Object.values(bundle).filter((made) => made.type === 'chunk');
        const main = chunks.find(({ facadeModuleId }) => facadeModuleId?.endsWith('renderer/main.tsx'));
        if (!main) throw new Error('the page has no script that is made from main.tsx');
        const names = [...main.imports, main.fileName].filter((name) => !html.includes(name));
        const sheets = names.flatMap((name) => [
          ...(chunks.find(({ fileName }) => fileName === name)?.viteMetadata?.importedCss ?? []),
        ]);
        const link = (rel: string, name: string): HtmlTagDescriptor => ({
          tag: 'link',
          attrs: { rel, crossorigin: true, href: `./${name}` },
          injectTo: 'head',
        });
        return [
          ...names.map((name) => link('modulepreload', name)),
          ...sheets.map((name) => link('stylesheet', name)),
        ];
      },
    },
  };
}

export default defineConfig({
  root,
  base: './',
  plugins: [react(), poseFiles(), mainAtOnce()],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2024',
    // Both shells serve the page under a policy that forbids inline scripts and data: scripts.
    assetsInlineLimit: 0,
    modulePreload: {
      polyfill: false,
      // The worker has no document that could load ahead.
      resolveDependencies: (_, chunks, { hostId }) => (hostId.includes('-worker') ? [] : chunks),
    },
    rolldownOptions: {
      // The solver asks for this module in Node only; in the page it is never reached.
      onLog: (level, log, print) => {
        if (!/node:module.*highs\.mjs/.test(log.message)) print(level, log);
      },
      // The worker is built with the page, so that both load the one copy of the core.
      input: { index: `${root}/index.html`, 'analysis-worker': `${root}/jobs/analysis-worker.ts` },
      output: {
        entryFileNames: ({ name }) =>
          name.endsWith('-worker') ? `assets/${name}.js` : 'assets/[name]-[hash].js',
        chunkFileNames: ({ facadeModuleId }) =>
          /[\\/]language[\\/]catalogues[\\/]/.test(facadeModuleId ?? '')
            ? 'assets/texts-[name]-[hash].js'
            : 'assets/[name]-[hash].js',
        codeSplitting: {
          groups: [
            // Libraries change seldom; apart from them the program's own script stays small to read and to load again.
            { name: 'schemas', test: /node_modules[\\/]zod/, priority: 3 },
            // Vite's own helper, which every lazy page needs and the worker too: it would come to lie with one of them.
            { name: 'load-lazily', test: /vite[\\/]preload-helper/, priority: 7 },
            // In one file: the first script waits for little else.
            { name: 'first', test: FIRST, priority: 6 },
            // Only the planner of holes loads it.
            { name: 'highs', test: /node_modules[\\/]highs/, priority: 4 },
            { name: 'tables', test: /node_modules[\\/]papaparse/, priority: 4 },
            // Only the bench draws on a canvas.
            { name: 'canvas', test: CANVAS, priority: 4, includeDependenciesRecursively: false },
            { name: 'libraries', test: /node_modules/, priority: 2 },
            // What the bench does not load: sheets and templates, rosters, what the athlete is shown.
            {
              name: 'workshop',
              test: PAPERS,
              priority: 2,
              minShareCount: 2,
              includeDependenciesRecursively: false,
            },
            { name: 'core', test: /[\\/]core[\\/]/, priority: 1, minShareCount: 2 },
            // What several pages use, in one piece: many small ones would compress worse.
            { name: 'shared', test: SHARED, minShareCount: 2 },
          ],
        },
      },
    },
    chunkSizeWarningLimit: 1000,
  },
});
