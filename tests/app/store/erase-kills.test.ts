import { cpSync, mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { takeBackup } from '../../../app/store/backups.ts';
import { closeStore } from '../../../app/store/open-store.ts';
import { cases } from '../../cases.ts';
import { random32 } from '../../random32.ts';
import { type ChildProgram, startChild } from '../child/child-program.ts';
import { value } from '../shells/way-in.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';
import { filesWith, fillWithPerson, marksOf, NAME } from './marked-person.ts';

/** The program is killed between these times after the work began, milliseconds: most of it takes less. */
const KILL_AFTER_MS = [1, 250] as const;

/** A folder with somebody in every kind of row, in backups, and in every free text. */
async function filledFolder(): Promise<{ folder: string; id: string; backup: string }> {
  const folder = join(temporaryFolder(), 'data');
  mkdirSync(folder);
  const store = temporaryStore(folder);
  const { id } = fillWithPerson(store);
  const { name } = await takeBackup(store, 'asked');
  await takeBackup(store, 'daily');
  closeStore(store);
  return { folder, id, backup: name };
}

/** Backs up, restores and erases, one after the other, until the process is gone. */
async function work(program: ChildProgram, { id, backup }: { id: string; backup: string }): Promise<void> {
  try {
    await program.call('backups.take', {});
    await program.call('backups.restore', { name: backup, how: 'replace' });
    await program.call('athletes.erase', { id, name: NAME });
    await program.call('backups.take', {});
  } catch {
    await program.ended;
  }
}

describe('a program that is killed while it backs up, restores and erases', () => {
  it('has erased whoever was to be erased, at the latest when it is asked again: no byte is left', async () => {
    const filled = await filledFolder();
    const random = random32(40);
    for (let kill = 0; kill < cases(2, 40); kill++) {
      const folder = join(temporaryFolder(), 'data');
      cpSync(filled.folder, folder, { recursive: true });
      const killed = await startChild(folder);
      const [least, most] = KILL_AFTER_MS;
      const timer = setTimeout(() => killed.process.kill('SIGKILL'), least + (most - least) * random());
      await work(killed, filled);
      clearTimeout(timer);
      killed.process.kill('SIGKILL');
      await killed.ended;

      const again = await startChild(folder);
      const listed = value(await again.call('athletes.list', { search: NAME }));
      if (listed.length > 0) {
        expect(value(await again.call('athletes.erase', { id: filled.id, name: NAME })).copiesLeft).toEqual(
          [],
        );
      }
      again.process.kill('SIGTERM');
      await again.ended;
      const left = marksOf(filled.id).flatMap((mark) =>
        filesWith(folder, mark).map((file) => `${mark} in ${file}`),
      );
      expect(left, `kill ${kill}`).toEqual([]);
    }
  });
});
