import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findBinary } from '../../../app/launch/electron-binary.ts';
import { temporaryFolder } from '../temporary.ts';

const DAY_MS = 86_400_000;

/** An installation whose fetch runs `script` (it notes each try in `tries`). */
function installation(script: string) {
  const root = temporaryFolder();
  const electron = join(root, 'node_modules/electron');
  mkdirSync(electron, { recursive: true });
  writeFileSync(join(electron, 'package.json'), '{"type":"commonjs"}');
  writeFileSync(
    join(electron, 'install.js'),
    `const { appendFileSync, mkdirSync, writeFileSync } = require('node:fs');
     appendFileSync(${JSON.stringify(join(root, 'tries'))}, 'x');
     ${script}`,
  );
  return { root, electron, tries: () => readFileSync(join(root, 'tries'), 'utf8').length };
}

describe("fetching Electron's program file", () => {
  it('is tried once; a failure is remembered for a day, unless the person insists', async () => {
    const { root, tries } = installation('process.exit(1)');
    let now = Date.UTC(2026, 10, 26);
    const clock = () => now;
    expect(await findBinary(root, { clock })).toMatchObject({ kind: 'none' });
    now += DAY_MS - 1;
    const second = await findBinary(root, { clock });
    expect(second).toMatchObject({ kind: 'none', reason: expect.stringContaining('today') });
    expect(tries()).toBe(1);
    await findBinary(root, { clock, insist: true });
    expect(tries()).toBe(2);
    now += DAY_MS;
    await findBinary(root, { clock });
    expect(tries()).toBe(3);
    // A clock that was ahead must not forbid it for ever.
    now -= 400 * DAY_MS;
    await findBinary(root, { clock });
    expect(tries()).toBe(4);
  });

  it('is given up when the other side stays silent', async () => {
    const { root } = installation('setInterval(() => {}, 1000)');
    expect(await findBinary(root, { limitMs: 300 })).toMatchObject({ kind: 'none' });
  });

  it('ends with Ctrl+C, and that is no failure to remember', async () => {
    const { root, tries } = installation('setInterval(() => {}, 1000)');
    for (const times of [1, 2]) {
      const finding = findBinary(root);
      await expect.poll(tries).toBe(times);
      process.emit('SIGINT', 'SIGINT');
      expect(await finding).toEqual({ kind: 'interrupted' });
    }
  });

  it('gives the file once it is there, and forgets earlier failures', async () => {
    const { root, electron } = installation(`
      writeFileSync(__dirname + '/path.txt', 'electron');
      mkdirSync(__dirname + '/dist');
      writeFileSync(__dirname + '/dist/electron', '');`);
    const found = { kind: 'found', path: join(electron, 'dist/electron') };
    expect(await findBinary(root)).toEqual(found);
    expect(await findBinary(root)).toEqual(found);
  });
});
