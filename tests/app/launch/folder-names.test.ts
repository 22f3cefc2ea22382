import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, symlinkSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryFolder } from '../temporary.ts';

const ROOT = join(import.meta.dirname, '../../..');

describe('a program folder with a space, an accent and a percent sign in its name', () => {
  it.each([
    'app/electron/vite.config.ts',
    'app/launch/vite.config.ts',
    'renderer/vite.config.ts',
    'tests/vitest.config.ts',
  ])('is found by %s', (config) => {
    const root = join(temporaryFolder(), 'Kneel wright ő 100%20');
    mkdirSync(join(root, config, '..'), { recursive: true });
    copyFileSync(join(ROOT, config), join(root, config));
    symlinkSync(join(ROOT, 'node_modules'), join(root, 'node_modules'), 'dir');
    const script = `const { default: made } = await import(${JSON.stringify(`./${encodeURI(config)}`)});
        const { existsSync } = await import('node:fs');
        console.log(JSON.stringify([made.root, existsSync(made.root)]));`;
    const { stdout, stderr } = spawnSync(process.execPath, ['--input-type=module', '-e', script], {
      cwd: root,
      encoding: 'utf8',
    });
    expect(stderr).toBe('');
    expect(JSON.parse(stdout)).toEqual([expect.stringContaining('Kneel wright ő 100%20'), true]);
  });
});
