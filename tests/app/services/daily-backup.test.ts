import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { backUpOnceADay } from '../../../app/services/daily-backup.ts';
import { listBackups } from '../../../app/store/backups.ts';
import { createFit } from '../../../app/store/fits.ts';
import { inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const DAY = 86_400_000;

describe('the daily backup', () => {
  it('is made once a day, once there is something to back up', async () => {
    let now = Date.UTC(2026, 2, 2, 9);
    const opened = openedProgram(temporaryFolder(), { clock: () => now });
    const { program } = opened;
    const count = () => listBackups(program.store.folder).length;
    await backUpOnceADay(program);
    expect(count()).toBe(0);
    createFit(program.store, inventedFit());
    await backUpOnceADay(program);
    await backUpOnceADay(program);
    expect(count()).toBe(1);
    now += DAY;
    await backUpOnceADay(program);
    expect(count()).toBe(2);
    opened.close();
  });

  it('that fails is told, and no longer told once one has worked', async () => {
    const folder = temporaryFolder();
    const opened = openedProgram(folder);
    const { program } = opened;
    createFit(program.store, inventedFit());
    writeFileSync(join(folder, 'backups'), 'a file where the folder should be');
    await backUpOnceADay(program);
    expect([...program.notices.values()]).toEqual([expect.stringContaining('Today’s backup failed')]);
    const { rmSync } = await import('node:fs');
    rmSync(join(folder, 'backups'));
    await backUpOnceADay(program);
    expect([...program.notices.values()]).toEqual([]);
    opened.close();
  });
});
