import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { backUpOnceADay } from '../../../app/services/daily-backup.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import type { Program } from '../../../app/services/program.ts';
import { LONG } from '../../cases.ts';
import { inventedAthlete, inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const DAYS = 7;
/** A movement of the hand every ten seconds, eight hours a day, is 2 880. The quick run edits for a quarter of an hour a day. */
const MOVES_A_DAY = LONG ? 3000 : 80;
const REVISIONS_A_DAY = 40;
const MB = 1024 * 1024;

setFlagsFromString('--expose-gc');
const collectGarbage = runInNewContext('gc') as () => void;

function heapMb(): number {
  collectGarbage();
  return process.memoryUsage().heapUsed / MB;
}

function sizes(folder: string): Record<string, number> {
  const files = readdirSync(folder).filter((name) => name.startsWith('kneelwright.db'));
  return Object.fromEntries(files.map((name) => [name, statSync(join(folder, name)).size / MB]));
}

async function mustDo(program: Program, name: string, input: unknown): Promise<{ id: string }> {
  const result = await dispatch(program, name, input);
  if (!result.ok) throw new Error(result.error.message);
  return result.value as { id: string };
}

describe("a week's editing", () => {
  it('leaves the file as large as what was kept, the log short, and the memory as it was', async () => {
    const folder = temporaryFolder();
    let now = Date.UTC(2026, 2, 2, 9);
    const opened = openedProgram(folder, { clock: () => now });
    const { program } = opened;
    // Waiting for the disk changes no size; 21 000 waits would make the test long.
    program.store.db.pragma('synchronous = OFF');
    const { id } = await mustDo(program, 'fits.create', { fit: inventedFit() });
    const revisionBytes = JSON.stringify(inventedFit()).length;
    const heap: number[] = [];
    const log: number[] = [];
    for (let day = 0; day < DAYS; day++) {
      for (let move = 0; move < MOVES_A_DAY; move++) {
        now += 10_000;
        const fit = inventedFit({ padAftM: 0.1 + (move % 100) / 1000 });
        await mustDo(program, 'drafts.save', { id, fit });
        if (move % (MOVES_A_DAY / REVISIONS_A_DAY) === 0) {
          await mustDo(program, 'revisions.save', { fitId: id, fit, name: `day ${day}, move ${move}` });
          await mustDo(program, 'athletes.save', { athlete: inventedAthlete(`Athlete ${move}`) });
        }
        log.push(sizes(folder)['kneelwright.db-wal'] ?? 0);
      }
      await backUpOnceADay(program);
      heap.push(heapMb());
      now = Date.UTC(2026, 2, 3 + day, 9);
    }
    const keptMb = (DAYS * REVISIONS_A_DAY * revisionBytes) / MB;
    expect(sizes(folder)['kneelwright.db']).toBeLessThan(2.5 * keptMb + 0.5);
    expect(Math.max(...log)).toBeLessThan(8);
    expect(heap.at(-1)! - heap[1]!).toBeLessThan(4);
    expect(readdirSync(join(folder, 'backups'))).toHaveLength(DAYS);
    expect([...program.notices.values()]).toEqual([]);
    opened.close();
    expect(Object.keys(sizes(folder))).toEqual(['kneelwright.db']);
  });
});
