import { existsSync, mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { type DatedBackup, outdatedBackups } from '../../../app/store/backup-rotation.ts';
import { listBackups, newestGoodBackup, takeBackup } from '../../../app/store/backups.ts';
import { createFit, listFits, saveDraft } from '../../../app/store/fits.ts';
import { restoreBackup } from '../../../app/store/restore.ts';
import { inventedFit } from '../invented.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const page = { archived: false, search: '', limit: 200, offset: 0 };
const DAY = 86_400_000;
const START = Date.UTC(2026, 0, 1, 18);

describe('the rotation', () => {
  /** Two years of daily backups, each followed by the rotation, as the program does it. */
  function afterDays(days: number): { kept: DatedBackup[]; now: number } {
    let kept: DatedBackup[] = [];
    let now = START;
    for (let day = 0; day < days; day++) {
      now = START + day * DAY;
      const takenAt = new Date(now).toISOString();
      kept.push({ name: takenAt, takenAt, cause: 'daily' });
      const gone = new Set(outdatedBackups(kept, now));
      kept = kept.filter((backup) => !gone.has(backup));
    }
    return { kept, now };
  }

  it('keeps a week of days, then weeks, then a year of months, and never grows beyond that', () => {
    const { kept, now } = afterDays(730);
    const ages = kept
      .map(({ takenAt }) => Math.round((now - Date.parse(takenAt)) / DAY))
      .sort((a, b) => a - b);
    expect(ages.slice(0, 7)).toEqual([0, 1, 2, 3, 4, 5, 6]);
    expect(ages.filter((age) => age >= 7 && age < 36).length).toBeGreaterThanOrEqual(4);
    expect(ages.at(-1)).toBeGreaterThan(330);
    expect(ages.length).toBeLessThanOrEqual(7 + 5 + 12);
    const gaps = ages.slice(1).map((age, i) => age - ages[i]!);
    expect(Math.max(...gaps)).toBeLessThanOrEqual(31);
  });

  it('keeps the last backup however old, and one from a clock that was ahead', () => {
    const old = { name: 'a', takenAt: '2020-01-01T00:00:00.000Z', cause: 'daily' } as const;
    expect(outdatedBackups([old], START)).toEqual([]);
    const ahead = { name: 'b', takenAt: '2031-01-01T00:00:00.000Z', cause: 'daily' } as const;
    expect(outdatedBackups([old, ahead], START)).toEqual([]);
  });

  it('keeps those before a restore or an import for thirty days, and the newest ten in any case', () => {
    const at = (days: number) => new Date(START - days * DAY).toISOString();
    const newest = { name: 'n', takenAt: at(0), cause: 'daily' } as const;
    const recent = { name: 'r', takenAt: at(29), cause: 'before-restore' } as const;
    const stale = { name: 's', takenAt: at(31), cause: 'before-import' } as const;
    expect(outdatedBackups([newest, recent, stale], START)).toEqual([]);
    const more = Array.from({ length: 10 }, (_, i) => ({ ...recent, name: `r${i}` }));
    expect(outdatedBackups([newest, ...more, stale], START)).toEqual([stale]);
  });
});

describe('a backup', () => {
  it('is one sound file that opens without writing, holding what was there while work went on', async () => {
    const store = temporaryStore();
    const { id } = createFit(store, inventedFit());
    const running = takeBackup(store, 'daily');
    saveDraft(store, { id, fit: inventedFit({ padAftM: 0.19 }) });
    const backup = await running;
    const folder = join(store.folder, 'backups');
    expect(readdirSync(folder)).toEqual([backup.name]);
    const copy = new Database(join(folder, backup.name), { readonly: true });
    expect(copy.pragma('integrity_check', { simple: true })).toBe('ok');
    expect(copy.pragma('journal_mode', { simple: true })).toBe('delete');
    expect(copy.prepare('SELECT count(*) FROM drafts').pluck().get()).toBe(1);
    copy.close();
  });

  it('that is damaged is passed over for the newest good one', async () => {
    const store = temporaryStore();
    createFit(store, inventedFit());
    const good = await takeBackup(store, 'daily');
    const later = await takeBackup(store, 'asked');
    writeFileSync(join(store.folder, 'backups', later.name), 'torn');
    expect(newestGoodBackup(store.folder)?.name).toBe(good.name);
  });

  it('leaves strange files in the folder alone, and out of the list', () => {
    const folder = temporaryFolder();
    mkdirSync(join(folder, 'backups'));
    for (const name of [
      'notes.txt',
      'kneelwright-yesterday.db',
      'kneelwright-2026-01-01T00-00-00-000Z-other.db',
    ]) {
      writeFileSync(join(folder, 'backups', name), '');
    }
    expect(listBackups(folder)).toEqual([]);
  });

  it('restores what was there, whole, or brings back only what is missing; a wrong name changes nothing', async () => {
    const store = temporaryStore();
    const first = createFit(store, inventedFit({ name: 'first' }));
    const backup = await takeBackup(store, 'asked');
    store.db.exec('DELETE FROM drafts');
    store.db.prepare('DELETE FROM fits WHERE id = ?').run(first.id);
    const second = createFit(store, inventedFit({ name: 'second' }));
    const ids = () => listFits(store, page).map(({ id }) => id);
    expect(restoreBackup(store, { name: '../../etc/passwd', how: 'replace' })).toBe('no-such-backup');
    expect(ids()).toEqual([second.id]);
    expect(restoreBackup(store, { name: backup.name, how: 'bring-back' })).toBe('restored');
    expect(ids().sort()).toEqual([first.id, second.id].sort());
    expect(restoreBackup(store, { name: backup.name, how: 'replace' })).toBe('restored');
    expect(ids()).toEqual([first.id]);
    expect(readdirSync(store.folder).filter((name) => name.startsWith('restoring'))).toEqual([]);
    expect(existsSync(join(store.folder, 'backups', backup.name))).toBe(true);
  });
});
