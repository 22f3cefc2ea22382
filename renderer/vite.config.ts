import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const root = import.meta.dirname;
const SHARED = /renderer[\\/](?!jobs|pages|shell)\w+[\\/]/;

export default defineConfig({
  root,
  base: './',
  plugins: [react()],
  build: {
    outDir: 'dist',
    emptyOutDir: true,
    target: 'es2024',
    // Both shells serve the page under a policy that forbids inline scripts and data: scripts.
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      // The worker is built with the page, so that both load the one copy of the core.
      input: { index: `${root}/index.html`, 'analysis-worker': `${root}/jobs/analysis-worker.ts` },
      output: {
        entryFileNames: ({ name }) =>
          name === 'analysis-worker' ? 'assets/analysis-worker.js' : 'assets/[name]-[hash].js',
        codeSplitting: {
          groups: [
            // Libraries change seldom; apart from them the program's own script stays small to read and to load again.
            { name: 'schemas', test: /node_modules[\\/]zod/, priority: 3 },
            { name: 'libraries', test: /node_modules/, priority: 2 },
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
