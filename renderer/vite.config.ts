import react from '@vitejs/plugin-react';
import { defineConfig } from 'vite';

const root = import.meta.dirname;

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
      output: {
        // Libraries change seldom; apart from them the program's own script stays small to read and to load again.
        codeSplitting: { groups: [{ name: 'libraries', test: /node_modules/ }] },
      },
    },
    chunkSizeWarningLimit: 1000,
  },
  worker: { format: 'es' },
});
