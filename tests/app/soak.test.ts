import { rmSync } from 'node:fs';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { journalPath } from '../../app/store/journal-file.ts';
import { STORE_FILE } from '../../app/store/open-store.ts';
import { cases } from '../cases.ts';
import { killAndLook } from '../soak/kill-and-look.ts';
import { scriptedEditor } from '../soak/scripted-editor.ts';
import { startChild } from './child/child-program.ts';
import { temporaryFolder } from './temporary.ts';

const KILLS = cases(3, 60);

/** A soak as long as wanted is `npm run soak`; this one keeps it honest. */
describe('a program killed at random moments', () => {
  it('has kept every edit that it said it kept', async () => {
    const result = await killAndLook({ kills: KILLS, seed: 20260302 });
    expect(result).toMatchObject({ kills: KILLS, lostEdits: 0, damagedFiles: 0 });
    expect(result.acknowledgedEdits).toBeGreaterThan(8 * KILLS);
  });

  it('would be found out if it had not', async () => {
    const folder = join(temporaryFolder(), 'data');
    const editor = scriptedEditor(() => 0.5);
    const first = await startChild(folder);
    await editor.edit(first, { after: 10, kill: () => first.process.kill('SIGKILL') });
    const db = new Database(join(folder, STORE_FILE));
    db.exec('DELETE FROM drafts; DELETE FROM row_sums');
    db.close();
    // Whoever takes the journal away as well leaves nothing to bring the drafts back from.
    rmSync(journalPath(folder));
    const second = await startChild(folder);
    expect(await editor.lost(second, 'all')).not.toEqual([]);
    second.process.kill('SIGTERM');
    await second.ended;
  });
});
