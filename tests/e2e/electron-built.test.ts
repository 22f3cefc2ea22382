import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';

const ROOT = join(import.meta.dirname, '../..');
const data = mkdtempSync(join(tmpdir(), 'kneelwright-built-'));
afterAll(() => rmSync(data, { recursive: true, force: true }));

/** Makes calls in the built desktop program, in a process of its own. */
function callBuilt(...calls: { name: string; input: unknown }[]) {
  const child = join(import.meta.dirname, 'electron-built-child.ts');
  const args = [child, `--data=${data}`, ...calls.map((call) => JSON.stringify(call))];
  const ran = spawnSync(process.execPath, args, { encoding: 'utf8', cwd: ROOT });
  expect(ran.stderr).toBe('');
  return JSON.parse(ran.stdout) as { results: unknown[]; page: number; preload: { preload: string } };
}

describe('the desktop program as built', () => {
  it('runs from its one file: store, demo, page and preload are where it looks for them', () => {
    const { results, page, preload } = callBuilt(
      { name: 'program.state', input: {} },
      { name: 'demo.install', input: {} },
      { name: 'fits.list', input: {} },
    );
    expect(results[0]).toMatchObject({
      ok: true,
      value: { shell: 'electron', empty: true, dataFolder: data },
    });
    expect(results[1]).toMatchObject({ ok: true });
    expect(results[2]).toMatchObject({ ok: true, value: expect.arrayContaining([expect.anything()]) });
    expect(page).toBe(200);
    expect(existsSync(preload.preload)).toBe(true);
  });

  it('finds again what it kept', () => {
    const { results } = callBuilt({ name: 'program.state', input: {} });
    expect(results[0]).toMatchObject({ ok: true, value: { empty: false, recovery: null, problems: [] } });
  });
});
