import {
  chmodSync,
  chownSync,
  copyFileSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createFit } from '../../../app/store/fits.ts';
import { closeStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { EndedEarly, startChild } from '../child/child-program.ts';
import { inventedFit } from '../invented.ts';
import { value } from '../shells/way-in.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const dataIn = (folder: string) => join(folder, 'data');

async function refusalOf(start: Promise<unknown>): Promise<EndedEarly> {
  const ended = await start.catch((error: unknown) => error);
  if (!(ended instanceof EndedEarly)) throw new Error('the program was not refused');
  return ended;
}

/** A plain refusal: one line, no stack, and it says that nothing was lost. */
function expectPlain({ said, code }: EndedEarly): void {
  expect(code).toBe(1);
  expect(said.split('\n')).toHaveLength(1);
  expect(said).not.toMatch(/\bat .*:\d+|Error:/);
  expect(said).toMatch(/Nothing was changed|left unchanged/);
}

describe('the program as a process', () => {
  it.each(['SIGTERM', 'SIGINT', 'SIGHUP'] as const)('closes its store whole on %s', async (signal) => {
    const folder = dataIn(temporaryFolder());
    const child = await startChild(folder);
    value(await child.call('fits.create', { fit: inventedFit() }));
    child.process.kill(signal);
    expect(await child.ended).toBe(0);
    expect(readdirSync(folder).filter((name) => name.startsWith(STORE_FILE))).toEqual([STORE_FILE]);
  });

  it('ends when a page asks, after it has answered', async () => {
    const child = await startChild(dataIn(temporaryFolder()));
    expect(value(await child.call('program.quit', {}))).toEqual({ quitting: true });
    expect(await child.ended).toBe(0);
  });

  it('does not start on a folder that another one has open; that one goes on', async () => {
    const folder = dataIn(temporaryFolder());
    const first = await startChild(folder);
    const refused = await refusalOf(startChild(folder));
    expect(refused.said).toContain('Another Kneelwright uses');
    expectPlain(refused);
    value(await first.call('fits.create', { fit: inventedFit() }));
    first.process.kill('SIGTERM');
    await first.ended;
  });

  it('starts again after a crash, with what was acknowledged', async () => {
    const folder = dataIn(temporaryFolder());
    const first = await startChild(folder);
    const { id } = value(await first.call('fits.create', { fit: inventedFit({ padAftM: 0.17 }) }));
    first.process.kill('SIGKILL');
    await first.ended;
    const second = await startChild(folder);
    expect(value(await second.call('fits.open', { id }))).toMatchObject({
      fit: { seats: [{ kneePad: { aftM: 0.17 } }] },
    });
    second.process.kill('SIGTERM');
    await second.ended;
  });

  it('says plainly that a store is of a newer program, and leaves it', async () => {
    const folder = dataIn(temporaryFolder());
    const store = temporaryStore(folder);
    store.db.pragma('user_version = 4711');
    closeStore(store);
    const before = readFileSync(join(folder, STORE_FILE));
    const refused = await refusalOf(startChild(folder));
    expect(refused.said).toContain('newer Kneelwright (data version 4711');
    expectPlain(refused);
    expect(readFileSync(join(folder, STORE_FILE)).equals(before)).toBe(true);
  });

  it('recovers a damaged store at the start, says so, and offers the backup', async () => {
    const folder = dataIn(temporaryFolder());
    const store = temporaryStore(folder);
    createFit(store, inventedFit());
    const { takeBackup } = await import('../../../app/store/backups.ts');
    const backup = await takeBackup(store, 'daily');
    closeStore(store);
    writeFileSync(join(folder, STORE_FILE), 'this was a database once, and is one no longer '.repeat(200));
    const child = await startChild(folder);
    const { recovery } = value(await child.call('program.state', {}));
    expect(recovery).toMatchObject({ newestGoodBackup: { name: backup.name } });
    expect(recovery!.message).toMatch(/uarantined unchanged .* nothing is missing\.$/);
    value(await child.call('backups.restore', { name: backup.name, how: 'bring-back' }));
    expect(value(await child.call('fits.list', {}))).toHaveLength(1);
    child.process.kill('SIGTERM');
    await child.ended;
  });
});

/** Root may write anywhere: the program is then run as nobody, in a place that nobody can reach. */
const asNobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};
const canDrop = process.platform !== 'win32';

describe.runIf(canDrop)('a folder that cannot be written to', () => {
  function readOnlyFolder(): string {
    const root = temporaryFolder();
    chmodSync(root, 0o777);
    const folder = dataIn(root);
    const store = temporaryStore(join(root, 'made'));
    createFit(store, inventedFit());
    closeStore(store);
    mkdirSync(folder);
    copyFileSync(join(root, 'made', STORE_FILE), join(folder, STORE_FILE));
    if (asNobody.uid) chownSync(folder, 65534, 65534);
    return folder;
  }

  it('is said plainly, and the store in it stays as it is', async () => {
    const folder = readOnlyFolder();
    const before = readFileSync(join(folder, STORE_FILE));
    chmodSync(folder, 0o555);
    const refused = await refusalOf(startChild(folder, { spawn: asNobody }));
    chmodSync(folder, 0o755);
    expect(refused.said).toContain('cannot be written to');
    expectPlain(refused);
    expect(readFileSync(join(folder, STORE_FILE)).equals(before)).toBe(true);
  });

  it('with a file in it that may not be written is said plainly as well', async () => {
    const folder = readOnlyFolder();
    chmodSync(join(folder, STORE_FILE), 0o444);
    const refused = await refusalOf(startChild(folder, { spawn: asNobody }));
    expect(refused.said).toContain('cannot be written to');
    expectPlain(refused);
  });
});
