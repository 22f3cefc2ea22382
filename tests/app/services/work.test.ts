import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { WorkCancelled } from '../../../app/background/job.ts';
import { JobFailed, startJob } from '../../../app/background/run-job.ts';
import { createWorkbench } from '../../../app/services/work.ts';
import { createWriteLock } from '../../../app/services/write-lock.ts';
import { temporaryFolder, temporaryStore } from '../temporary.ts';

const ROOT = join(import.meta.dirname, '../../..');
/** A program that does not end by itself is ended then, milliseconds. */
const HANGS_MS = 60_000;

const turn = () => new Promise((resolve) => setImmediate(resolve));

/** Keeps busy for a while, so that the work has to give way. */
function* busySteps(count: number, log: string[] = []): Generator<void, string> {
  for (let i = 0; i < count; i++) {
    const until = performance.now() + 3;
    while (performance.now() < until);
    log.push(`step ${i}`);
    yield;
  }
  return 'done';
}

describe('a long piece of work', () => {
  it('gives way to others, says how far it is, and gives its result', async () => {
    const work = createWorkbench();
    expect(work.progress()).toBe(null);
    const running = work.run({ what: 'export', of: 30 }, busySteps(30));
    await turn();
    const seen = work.progress();
    expect(seen).toMatchObject({ what: 'export', of: 30 });
    expect(seen!.done).toBeGreaterThan(0);
    expect(seen!.done).toBeLessThan(30);
    expect(await running).toBe('done');
    expect(work.progress()).toBe(null);
  });

  it('stops when asked, between two steps', async () => {
    const work = createWorkbench();
    const log: string[] = [];
    const running = work.run({ what: 'export', of: 1000 }, busySteps(1000, log));
    await turn();
    expect(work.cancel()).toBe(true);
    await expect(running).rejects.toBeInstanceOf(WorkCancelled);
    expect(log.length).toBeLessThan(100);
    expect(work.cancel()).toBe(false);
  });
});

describe('a job in a thread', () => {
  const { file } = temporaryStore();
  const to = (name: string) => join(temporaryFolder(), name);

  it('is done by a thread that failed or was stopped before', async () => {
    const missing = startJob('backup', { file: to('missing.db'), to: to('a.db') });
    await expect(missing.result).rejects.toMatchObject({ code: 'SQLITE_CANTOPEN' });
    await expect(missing.result).rejects.toBeInstanceOf(JobFailed);
    const stopped = startJob('backup', { file, to: to('b.db') }, { waits: true });
    await stopped.ready;
    stopped.cancel();
    stopped.begin();
    await expect(stopped.result).rejects.toBeInstanceOf(WorkCancelled);
    expect(await startJob('backup', { file, to: to('c.db') }).result).toBe(null);
  });

  it('does not wait for another one', async () => {
    const waiting = startJob('backup', { file, to: to('d.db') }, { waits: true });
    await waiting.ready;
    expect(await startJob('backup', { file, to: to('e.db') }).result).toBe(null);
    waiting.begin();
    expect(await waiting.result).toBe(null);
  });

  it('keeps no program from ending', () => {
    const order = JSON.stringify({ file, to: to('f.db') });
    const program = to('program.ts');
    writeFileSync(
      program,
      // The thread's own end never comes: whoever waited for it would hang.
      `globalThis.setTimeout = () => ({ unref: () => ({}) });
      const { startJob } = await import('${pathToFileURL(join(ROOT, 'app/background/run-job.ts'))}');
      await import('${pathToFileURL(join(ROOT, 'app/shell/say.ts'))}');
      console.log(await startJob('backup', ${order}).result);`,
    );
    const said = execFileSync(process.execPath, [program], { timeout: HANGS_MS });
    expect(String(said)).toBe('null\n');
  });
});

describe('the write lock', () => {
  it('keeps everything else out of work that gives way, in the order of asking', async () => {
    const lock = createWriteLock();
    const log: string[] = [];
    const work = lock.alone(async () => {
      log.push('work begins');
      await turn();
      await turn();
      log.push('work ends');
    });
    const second = lock.alone(async () => {
      log.push('second');
    });
    await lock.free();
    log.push('others');
    await Promise.all([work, second]);
    expect(log).toEqual(['work begins', 'work ends', 'second', 'others']);
  });

  it('lets nobody in who waited for one work while the next one has begun', async () => {
    const lock = createWriteLock();
    const log: string[] = [];
    const work = (name: string) => async () => {
      log.push(`${name} begins`);
      await turn();
      log.push(`${name} ends`);
    };
    const first = lock.alone(work('first'));
    const edit = lock.free().then(() => log.push('edit'));
    await Promise.all([first, lock.alone(work('second')), edit]);
    expect(log).toEqual(['first begins', 'first ends', 'second begins', 'second ends', 'edit']);
  });

  it('is free again after work that failed', async () => {
    const lock = createWriteLock();
    await expect(lock.alone(() => Promise.reject(new Error('no luck')))).rejects.toThrow('no luck');
    await lock.free();
    expect(await lock.alone(async () => 7)).toBe(7);
  });
});
