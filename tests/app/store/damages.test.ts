import { copyFileSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { rebuildingSentence } from '../../../app/services/finding-sentences.ts';
import { type DatedBackup, outdatedBackups } from '../../../app/store/backup-rotation.ts';
import { takeBackup } from '../../../app/store/backups.ts';
import { createFit, saveDraft } from '../../../app/store/fits.ts';
import { journalPath, readJournal } from '../../../app/store/journal-file.ts';
import { openSafely } from '../../../app/store/open-safely.ts';
import { closeStore, STORE_FILE } from '../../../app/store/open-store.ts';
import { addPhoto, openPhoto } from '../../../app/store/photos.ts';
import { athletes, boats } from '../../../app/store/roster.ts';
import { cases } from '../../cases.ts';
import { DAMAGES, damageAndLook } from '../../soak/damages.ts';
import { inventedAthlete, inventedBoat, inventedFit } from '../invented.ts';
import { throughLoopback } from '../shells/through-loopback.ts';
import { value } from '../shells/way-in.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

describe('a store that something has damaged', () => {
  it('has everything that was kept, whatever befell one of its files; the long run is `npm run soak`', async () => {
    const result = await damageAndLook({ damages: cases(DAMAGES.length, 500), seed: 20261126 });
    expect(result).toMatchObject({ silent: 0, lossy: 0, speechless: 0 });
  });

  it('says so where journal and backups went with it, and keeps what still reads', async () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    for (let i = 0; i < 20; i++) createFit(store, inventedFit({ name: `Fit ${i}` }));
    closeStore(store);
    rmSync(journalPath(folder));
    const file = join(folder, STORE_FILE);
    const bytes = readFileSync(file);
    bytes.fill(0xa7, bytes.length - 8192);
    writeFileSync(file, bytes);
    const opened = openSafely(folder);
    if (opened.kind === 'refused') throw new Error(opened.refusal.code);
    expect(opened.findings.rebuilding).toMatchObject({ cause: 'damaged', complete: false });
    closeStore(opened.store);
  });

  it('says what a damaged page took where nothing but the file’s pages is left', () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    for (let i = 0; i < 20; i++) createFit(store, inventedFit({ name: `Fit ${i}` }));
    closeStore(store);
    for (const name of ['journal', 'manifest.json']) rmSync(join(folder, name), { force: true });
    const file = join(folder, STORE_FILE);
    const bytes = readFileSync(file);
    bytes.fill(0xa7, 0, 4096);
    // A page in the middle of a draft's text: that draft is lost, and no other one.
    const inText = Math.floor(bytes.lastIndexOf('"kneePad"') / 4096) * 4096;
    bytes.fill(0xa7, inText, inText + 4096);
    writeFileSync(file, bytes);
    const opened = openSafely(folder);
    if (opened.kind === 'refused') throw new Error(opened.refusal.code);
    const { rebuilding } = opened.findings;
    const { pages, salvaged } = rebuilding!;
    expect(pages!.unreadableRows + pages!.unreadablePages).toBeGreaterThan(0);
    expect(salvaged.fits.added).toBeGreaterThanOrEqual(15);
    expect(salvaged.fits.added).toBeLessThan(20);
    expect(rebuildingSentence(rebuilding!, null)).toMatch(/rows and .* pages are lost/);
    closeStore(opened.store);
  });

  it('notices one changed letter in a record, and puts it back', () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    const { id } = athletes.save(store, inventedAthlete('Ansa Example'));
    closeStore(store);
    const file = join(folder, STORE_FILE);
    const text = readFileSync(file, 'latin1').replaceAll('Ansa Example', 'Anza Example');
    writeFileSync(file, text, 'latin1');
    const opened = openSafely(folder);
    if (opened.kind === 'refused') throw new Error(opened.refusal.code);
    const { healing, rebuilding } = opened.findings;
    expect(healing !== null || rebuilding !== null).toBe(true);
    expect(athletes.get(opened.store, id)?.athlete.name).toBe('Ansa Example');
    closeStore(opened.store);
  });
});

describe('the file replaced under the running program', () => {
  it('is noticed before the next edit is said to be kept; what was kept before is there after a start', async () => {
    const folder = temporaryFolder();
    const way = await throughLoopback(folder);
    const { id } = value(await way.call('fits.create', { fit: inventedFit({ padAftM: 0.1 }) }));
    value(await way.call('backups.take', {}));
    const file = join(folder, 'data', STORE_FILE);
    const old = join(folder, 'old.db');
    const { name } = value(await way.call('backups.list', {}))[0]!;
    copyFileSync(join(folder, 'data/backups', name), old);
    value(await way.call('drafts.save', { id, fit: inventedFit({ padAftM: 0.2 }) }));
    renameSync(old, file);
    const late = await way.call('drafts.save', { id, fit: inventedFit({ padAftM: 0.3 }) });
    expect(late).toMatchObject({
      ok: false,
      error: { message: expect.stringContaining('Start again') },
    });
    await way.close();
    const again = await throughLoopback(folder);
    const opened = value(await again.call('fits.open', { id }));
    expect(opened.fit.seats[0]!.kneePad.aftM).toBe(0.2);
    await again.close();
  });
});

describe('the journal', () => {
  it('forgets what was not committed, and counts a line that does not fit its checksum', () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    const { id } = createFit(store, inventedFit());
    expect(() =>
      store.db.transaction(() => {
        store.db.prepare('UPDATE fits SET name = ? WHERE id = ?').run('never kept', id);
        throw new Error('taken back');
      })(),
    ).toThrow();
    saveDraft(store, { id, fit: inventedFit({ name: 'kept' }) });
    closeStore(store);
    const text = readFileSync(journalPath(folder), 'utf8');
    expect(text).not.toContain('never kept');
    const read = readJournal(folder);
    if (read === null || read === 'headless') throw new Error('no journal');
    expect(read).toMatchObject({ damagedLines: 0, from: 0, torn: false });
    read.close();
    writeFileSync(journalPath(folder), `${text.replace('"kept"', '"kepz"')}half a li`);
    expect(readJournal(folder)).toMatchObject({ torn: true });
  });

  it('reaches back to the backup before the last one, and no further', async () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    for (const padAftM of [0.1, 0.12, 0.14]) {
      saveDraft(store, { id, fit: inventedFit({ padAftM }) });
      await takeBackup(store, 'asked');
    }
    const read = readJournal(store.folder);
    if (read === null || read === 'headless') throw new Error('no journal');
    expect(read.from).toBeGreaterThan(0);
    expect(read.changes.filter(({ table }) => table === 'drafts')).toHaveLength(1);
    read.close();
  });

  it('brings a picture back byte by byte, also after a start that was cut short while the store was put together', () => {
    const folder = temporaryFolder();
    const store = temporaryStore(folder);
    const boatId = boats.save(store, inventedBoat('Photographed')).id;
    const bytes = Buffer.from(Array.from({ length: 300_000 }, (_, i) => (i * i) % 251));
    bytes.set([0xff, 0xd8, 0xff, 0xe0]);
    const photo = addPhoto(store, { boatId, caption: 'with a "quote", a\nbreak', bytes });
    if (typeof photo === 'string') throw new Error(photo);
    closeStore(store);
    for (const ending of ['', '-wal', '-shm']) rmSync(join(folder, STORE_FILE + ending), { force: true });
    // Cut short: an empty store has been begun, with a journal of its own.
    renameSync(journalPath(folder), `${journalPath(folder)}.other`);
    closeStore(temporaryStore(folder));
    const opened = openSafely(folder);
    if (opened.kind === 'refused') throw new Error(opened.refusal.code);
    expect(openPhoto(opened.store, photo.id)?.bytes.equals(bytes)).toBe(true);
    expect(readdirSync(folder).filter((name) => name.startsWith('journal'))).toEqual(['journal']);
    closeStore(opened.store);
  });
});

describe('a clock that is years ahead', () => {
  it('makes no earlier backup old, however many are taken while it is', () => {
    const daily = (takenAt: string): DatedBackup => ({ name: takenAt, takenAt, cause: 'daily' });
    const earlier = Array.from({ length: 7 }, (_, i) => daily(`2026-11-2${i}T08:00:00.000Z`));
    const ahead = Array.from({ length: 3 }, (_, i) => daily(`2037-11-2${i}T08:00:00.000Z`));
    for (let taken = 1; taken <= ahead.length; taken++) {
      const all = [...earlier, ...ahead.slice(0, taken)];
      const gone = outdatedBackups(all, Date.parse(ahead[taken - 1]!.takenAt));
      expect(all.length - gone.length).toBeGreaterThanOrEqual(7);
      expect(gone).not.toContain(earlier.at(-1));
    }
  });
});
