import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const made: string[] = [];

/** Lints one source text as if it stood in a folder of the house; gives the rules it breaks. */
function lint(folder: string, source: string): string[] {
  const dir = mkdtempSync(join(root, folder, 'probe-'));
  made.push(dir);
  const file = join(dir, 'probe.ts');
  writeFileSync(file, source);
  const args = ['lint', '--config-path', '.biome.json', '--reporter=json', file];
  let out = '';
  try {
    out = execFileSync(join(root, 'node_modules/.bin/biome'), args, {
      cwd: root,
      encoding: 'utf8',
      stdio: 'pipe',
    });
  } catch (error) {
    out = String((error as { stdout?: string }).stdout);
  }
  rmSync(dir, { recursive: true });
  return [...out.matchAll(/"category":"([^"]+)"/g)].map((m) => m[1]!);
}

afterAll(() => {
  for (const dir of made) rmSync(dir, { recursive: true, force: true });
});

const IMPORTS = 'lint/style/noRestrictedImports';

describe('imports point one way, type imports included', () => {
  it.each([
    ['core', "import type { X } from '../../app/contract/result.ts';\nexport type Y = X;"],
    ['core', "import { readFileSync } from 'node:fs';\nexport const y = readFileSync;"],
    ['core', "import { useState } from 'react';\nexport const y = useState;"],
    ['app', "import type { X } from '../../renderer/main.tsx';\nexport type Y = X;"],
    ['renderer', "import type { X } from '../../app/store/open-store.ts';\nexport type Y = X;"],
    ['renderer', "import { readFileSync } from 'node:fs';\nexport const y = readFileSync;"],
    ['app/contract', "import type { X } from '../../store/open-store.ts';\nexport type Y = X;"],
  ])('%s refuses %j', (folder, source) => {
    expect(lint(folder, source)).toContain(IMPORTS);
  });

  it.each([
    ['core', "import { z } from 'zod';\nimport { add } from '../frame/vec3.ts';\nexport const y = [z, add];"],
    ['renderer', "import type { X } from '../../app/contract/result.ts';\nexport type Y = X;"],
    ['app', "import { add } from '../../core/frame/vec3.ts';\nexport const y = add;"],
  ])('%s allows %j', (folder, source) => {
    expect(lint(folder, source)).not.toContain(IMPORTS);
  });
});

describe('file paths', () => {
  it.each([
    "export const root = new URL('../..', import.meta.url).pathname;",
    'export const { length } = new URL(import.meta.url).pathname;',
  ])('are not read off a URL: %s', (source) => {
    expect(lint('app', source)).toContain('plugin');
  });

  it('may come from the module itself', () => {
    expect(lint('app', 'export const root = import.meta.dirname;')).not.toContain('plugin');
  });
});

describe('core is pure', () => {
  it.each([
    'Date.now()',
    'setTimeout(() => 0, 1)',
    'document.title',
    'performance.now()',
    'crypto.randomUUID()',
  ])('refuses %s', (call) => {
    expect(lint('core', `export const y = () => ${call};`)).toContain('lint/style/noRestrictedGlobals');
  });
});
