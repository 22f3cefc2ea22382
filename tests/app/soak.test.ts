import { join } from 'node:path';
import Database from 'better-sqlite3';
import { describe, expect, it } from 'vitest';
import { STORE_FILE } from '../../app/store/open-store.ts';
import { killAndLook } from '../soak/kill-and-look.ts';
import { scriptedEditor } from '../soak/scripted-editor.ts';
import { startChild } from './child/child-program.ts';
import { temporaryFolder } from './temporary.ts';

/** The long run is `npm run soak`; this one keeps it honest. */
describe('a program killed at random moments', { timeout: 300_000 }, () => {
  it('has kept every edit that it said it kept', async () => {
    const result = await killAndLook({ kills: 8, seed: 20260302 });
    expect(result).toMatchObject({ kills: 8, lostEdits: 0, damagedFiles: 0 });
    expect(result.acknowledgedEdits).toBeGreaterThan(50);
  });

  it('would be found out if it had not', async () => {
    const folder = join(temporaryFolder(), 'data');
    const editor = scriptedEditor(() => 0.5);
    const first = await startChild(folder);
    setTimeout(() => first.process.kill('SIGKILL'), 200);
    await editor.edit(first);
    const db = new Database(join(folder, STORE_FILE));
    db.exec('DELETE FROM drafts');
    db.close();
    const second = await startChild(folder);
    expect(await editor.lost(second, 'all')).not.toEqual([]);
    second.process.kill('SIGTERM');
    await second.ended;
  });
});
