import { join } from 'node:path';
import { defineConfig } from 'vitest/config';

const root = join(import.meta.dirname, '..');
const project = (name: string, include: string[], testTimeout = 20_000) => ({
  root,
  test: { name, include, environment: 'node' as const, testTimeout, hookTimeout: 60_000 },
});

export default defineConfig({
  root,
  test: {
    projects: [
      project('core', ['tests/core/**/*.test.ts', 'tests/house/**/*.test.ts', 'tests/bench/**/*.test.ts']),
      project('reference', ['tests/reference/**/*.test.ts'], 60_000),
      project('app', ['tests/app/**/*.test.ts'], 60_000),
      project('renderer', ['tests/renderer/**/*.test.ts']),
      {
        ...project('e2e', ['tests/e2e/**/*.test.ts'], 120_000),
        test: { ...project('e2e', ['tests/e2e/**/*.test.ts'], 120_000).test, fileParallelism: false },
      },
    ],
  },
});
