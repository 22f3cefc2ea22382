import { chmodSync, mkdirSync, readdirSync, statSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../app/store/backups.ts';
import { createFit } from '../../../app/store/fits.ts';
import { closeStore, openStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { recoverStore } from '../../../app/store/recover.ts';
import { inventedFit } from '../invented.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const mode = (path: string) => statSync(path).mode & 0o777;

/** Everything in a folder that somebody else may read, write or enter. */
function open(folder: string): string[] {
  return ['.', ...readdirSync(folder, { recursive: true, encoding: 'utf8' })].filter(
    (name) => (mode(join(folder, name)) & 0o077) !== 0,
  );
}

describe.runIf(process.platform !== 'win32')('a store on a computer with several users', () => {
  it('is made for its owner alone: the file, its log, backups and copies, whatever the umask', async () => {
    const before = process.umask(0);
    try {
      const folder = join(temporaryFolder(), 'data');
      const store = temporaryStore(folder);
      createFit(store, inventedFit());
      await takeBackup(store, 'daily');
      expect(readdirSync(folder)).toEqual(
        expect.arrayContaining([STORE_FILE, `${STORE_FILE}-wal`, 'backups']),
      );
      expect(open(folder)).toEqual([]);
      closeStore(store);
      const recovered = recoverStore(folder);
      if (recovered.kind !== 'recovered') throw new Error(recovered.refusal.code);
      closeStore(recovered.store);
      expect(open(folder)).toEqual([]);
    } finally {
      process.umask(before);
    }
  });

  it('made by an earlier program is closed to others at the next start', async () => {
    const folder = join(temporaryFolder(), 'data');
    const store = temporaryStore(folder);
    createFit(store, inventedFit());
    const { name } = await takeBackup(store, 'daily');
    closeStore(store);
    writeFileSync(join(folder, 'display.json'), '{}');
    for (const [path, bits] of [
      ['.', 0o755],
      [STORE_FILE, 0o644],
      ['backups', 0o755],
      [`backups/${name}`, 0o664],
      ['display.json', 0o644],
    ] as const)
      chmodSync(join(folder, path), bits);
    expect(open(folder)).toHaveLength(5);
    closeStore(temporaryStore(folder));
    expect(open(folder)).toEqual([]);
  });

  it("leaves a folder of other things as open as it was, and closes only the program's own", () => {
    const folder = temporaryFolder();
    const elsewhere = join(temporaryFolder(), 'others');
    mkdirSync(elsewhere);
    writeFileSync(join(folder, 'notes.txt'), 'somebody else’s');
    symlinkSync(elsewhere, join(folder, 'backups'), 'dir');
    // By hand: the computer's umask may be narrow.
    for (const open of [folder, elsewhere]) chmodSync(open, 0o755);
    chmodSync(join(folder, 'notes.txt'), 0o644);
    const opening = openStore(folder);
    if (opening.kind === 'refused') throw new Error(opening.refusal.code);
    closeStore(opening.store);
    expect(mode(folder)).toBe(0o755);
    expect(mode(join(folder, 'notes.txt'))).toBe(0o644);
    expect(mode(elsewhere)).toBe(0o755);
    expect(mode(join(folder, STORE_FILE))).toBe(0o600);
  });
});
