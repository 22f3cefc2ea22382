import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { backUpOnceADay } from '../../../app/services/daily-backup.ts';
import { openProgram } from '../../../app/services/open-program.ts';
import { listBackups } from '../../../app/store/backups.ts';
import { createFit } from '../../../app/store/fits.ts';
import { inventedFit } from '../invented.ts';
import { temporaryFolder } from '../temporary.ts';

const DAY = 86_400_000;

describe('the daily backup', () => {
  it('is made once a day, once there is something to back up', async () => {
    let now = Date.UTC(2026, 2, 2, 9);
    const shell = createLoopbackShell(() => {});
    const root = join(import.meta.dirname, '../../..');
    const opened = openProgram({ root, folder: temporaryFolder(), shell, clock: () => now });
    if (opened.kind === 'refused') throw new Error(opened.sentence);
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
    const opened = openProgram({
      root: join(import.meta.dirname, '../../..'),
      folder,
      shell: createLoopbackShell(() => {}),
    });
    if (opened.kind === 'refused') throw new Error(opened.sentence);
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
