import { spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
/** What the linter reads of the house beside the sources. */
const SETTINGS = ['.biome.json', '.gitignore', 'tests/house/rules'];
const IMPORTS = 'lint/style/noRestrictedImports';

/** Source texts, each with the folder of the house that it would stand in. */
type Probe = readonly [folder: string, source: string];

const REFUSED_IMPORTS: readonly Probe[] = [
  ['core', "import type { X } from '../../app/contract/result.ts';\nexport type Y = X;"],
  ['core', "import { readFileSync } from 'node:fs';\nexport const y = readFileSync;"],
  ['core', "import { useState } from 'react';\nexport const y = useState;"],
  ['app', "import type { X } from '../../renderer/main.tsx';\nexport type Y = X;"],
  ['renderer', "import type { X } from '../../app/store/open-store.ts';\nexport type Y = X;"],
  ['renderer', "import { readFileSync } from 'node:fs';\nexport const y = readFileSync;"],
  ['app/contract', "import type { X } from '../../language/messages.ts';\nexport type Y = X;"],
  ['app/language', "import type { X } from '../../store/open-store.ts';\nexport type Y = X;"],
  ['app/language', "import { readFileSync } from 'node:fs';\nexport const y = readFileSync;"],
  ['core', "import type { X } from '../../app/language/messages.ts';\nexport type Y = X;"],
  ['app/contract', "import type { X } from '../../store/open-store.ts';\nexport type Y = X;"],
];

const ALLOWED_IMPORTS: readonly Probe[] = [
  ['core', "import { z } from 'zod';\nimport { add } from '../frame/vec3.ts';\nexport const y = [z, add];"],
  ['renderer', "import type { X } from '../../app/contract/result.ts';\nexport type Y = X;"],
  ['renderer', "import type { X } from '../../app/language/messages.ts';\nexport type Y = X;"],
  ['app', "import { add } from '../../core/frame/vec3.ts';\nexport const y = add;"],
];

const IMPURE: readonly Probe[] = [
  'Date.now()',
  'setTimeout(() => 0, 1)',
  'document.title',
  'performance.now()',
  'crypto.randomUUID()',
].map((call) => ['core', `export const y = () => ${call};`]);

const broken = lintAll([...REFUSED_IMPORTS, ...ALLOWED_IMPORTS, ...IMPURE]);

describe('imports point one way, type imports included', () => {
  it.each(REFUSED_IMPORTS)('%s refuses %j', (...probe) => {
    expect(broken(probe)).toContain(IMPORTS);
  });

  it.each(ALLOWED_IMPORTS)('%s allows %j', (...probe) => {
    expect(broken(probe)).not.toContain(IMPORTS);
  });
});

describe('core is pure', () => {
  it.each(IMPURE)('%s refuses %s', (...probe) => {
    expect(broken(probe)).toContain('lint/style/noRestrictedGlobals');
  });
});

/**
 * Lints all the texts in one call, in an empty house that holds nothing but the linter's own settings: in the real one the
 * linter reads every source first, for seconds. Gives the rules that a text breaks.
 */
function lintAll(probes: readonly Probe[]): (probe: Probe) => readonly string[] {
  const house = mkdtempSync(join(tmpdir(), 'kneelwright-house-'));
  const fileOf = (at: number) => `${probes[at]![0]}/probe-${at}/probe.ts`;
  try {
    for (const name of SETTINGS) cpSync(join(root, name), join(house, name), { recursive: true });
    probes.forEach(([folder, source], at) => {
      mkdirSync(join(house, folder, `probe-${at}`), { recursive: true });
      writeFileSync(join(house, fileOf(at)), source);
    });
    const folders = ['core', 'app', 'renderer'];
    const args = ['lint', '--config-path', '.biome.json', '--reporter=json', '--max-diagnostics=none'];
    const run = spawnSync(join(root, 'node_modules/.bin/biome'), [...args, ...folders], {
      cwd: house,
      encoding: 'utf8',
    });
    const { summary, diagnostics } = JSON.parse(run.stdout) as {
      summary: { unchanged: number };
      diagnostics: { category: string; location: { path: string } }[];
    };
    // A linter that looked at nothing would allow everything.
    if (summary.unchanged !== probes.length) throw new Error(`linted ${summary.unchanged}: ${run.stderr}`);
    return ([folder, source]) => {
      const path = fileOf(probes.findIndex((probe) => probe[0] === folder && probe[1] === source));
      return diagnostics.filter(({ location }) => location.path === path).map(({ category }) => category);
    };
  } finally {
    rmSync(house, { recursive: true, force: true });
  }
}
