import {
  closeSync,
  copyFileSync,
  openSync,
  readdirSync,
  readFileSync,
  statSync,
  truncateSync,
  writeFileSync,
  writeSync,
} from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../app/store/backups.ts';
import { createFit, listFits, openFit, saveDraft } from '../../../app/store/fits.ts';
import { closeStore, openStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { recoverStore } from '../../../app/store/recover.ts';
import { restoreBackup } from '../../../app/store/restore.ts';
import { saveRevision } from '../../../app/store/revisions.ts';
import { athletes } from '../../../app/store/roster.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { steppingClock, temporaryFolder, temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 1000, offset: 0 };
const FITS = 40;

/** A store of forty fits, each with a revision and a draft; closed. */
async function filledFolder(backup: 'with-backup' | 'without'): Promise<string> {
  const folder = temporaryFolder();
  const store = temporaryStore(folder);
  athletes.save(store, inventedAthlete());
  for (let i = 0; i < FITS; i++) {
    const { id } = createFit(store, inventedFit({ name: `Fit ${i}` }));
    saveRevision(store, { fitId: id, fit: inventedFit({ name: `Fit ${i}` }), name: 'one', reason: '' });
    saveDraft(store, { id, fit: inventedFit({ name: `Fit ${i}`, padAftM: 0.2 }) });
  }
  if (backup === 'with-backup') await takeBackup(store, 'daily');
  closeStore(store);
  return folder;
}

/** Overwrites a stretch of a file with noise. */
function scribble(path: string, from: number, length: number): void {
  const handle = openSync(path, 'r+');
  writeSync(handle, Buffer.alloc(length, 0xa7), 0, length, from);
  closeSync(handle);
}

describe('a damaged store', () => {
  it('is refused as damaged wherever a page of it is scribbled over, or found whole where none is used', async () => {
    const folder = await filledFolder('without');
    const file = join(folder, STORE_FILE);
    const sound = readFileSync(file);
    const pages = statSync(file).size / 4096;
    let refused = 0;
    for (let page = 0; page < pages; page++) {
      scribble(file, page * 4096, 4096);
      const opening = openStore(folder);
      if (opening.kind === 'open') closeStore(opening.store);
      else {
        expect(['damaged', 'foreign']).toContain(opening.refusal.code);
        refused += 1;
      }
      writeFileSync(file, sound);
    }
    // Pages that only hold spilled-over text carry no structure of their own; zod finds those when they are read.
    expect(refused).toBeGreaterThan(pages * 0.4);
  });

  it('is set aside byte for byte, and what reads of it is saved into a new one', async () => {
    const folder = await filledFolder('without');
    const file = join(folder, STORE_FILE);
    scribble(file, Math.floor(statSync(file).size / 4096 / 2) * 4096, 4096);
    const damaged = readFileSync(file);
    expect(openStore(folder)).toMatchObject({ kind: 'refused', refusal: { code: 'damaged' } });
    const recovered = recoverStore(folder, steppingClock());
    if (recovered.kind !== 'recovered') throw new Error('not recovered');
    const { store, recovery } = recovered;
    expect(recovery.salvaged.fits.added).toBeGreaterThan(FITS / 2);
    expect(recovery.salvaged.athletes.added).toBe(1);
    expect(listFits(store, page)).toHaveLength(recovery.salvaged.fits.added);
    expect(readFileSync(recovery.quarantinedAt).equals(damaged)).toBe(true);
    closeStore(store);
  });

  it('of which nothing reads gives an empty store, and its backup brings everything back', async () => {
    const folder = await filledFolder('with-backup');
    const file = join(folder, STORE_FILE);
    truncateSync(file, 3000);
    scribble(file, 0, 3000);
    const recovered = recoverStore(folder, steppingClock());
    if (recovered.kind !== 'recovered') throw new Error('not recovered');
    const { store, recovery } = recovered;
    expect(recovery.salvaged.fits.added).toBe(0);
    expect(recovery.brokenTables).not.toEqual([]);
    const [backup] = readdirSync(join(folder, 'backups'));
    expect(restoreBackup(store, { name: backup!, how: 'bring-back' })).toBe('restored');
    expect(listFits(store, page)).toHaveLength(FITS);
    closeStore(store);
  });

  it('keeps the edits that were still in its log when it is set aside', async () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    const { id } = createFit(store, inventedFit());
    saveDraft(store, { id, fit: inventedFit({ padAftM: 0.33 }) });
    const crashed = temporaryFolder();
    for (const ending of ['', '-wal']) {
      copyFileSync(join(folder, STORE_FILE + ending), join(crashed, STORE_FILE + ending));
    }
    const recovered = recoverStore(crashed, steppingClock());
    if (recovered.kind !== 'recovered') throw new Error('not recovered');
    expect(openFit(recovered.store, id)).toMatchObject({ fit: { seats: [{ kneePad: { aftM: 0.33 } }] } });
    closeStore(recovered.store);
  });
});
