import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout as pause, setImmediate as turn } from 'node:timers/promises';
import { describe, expect, it, vi } from 'vitest';
import { runWindow } from '../../../app/launch/run-electron.ts';
import { watchWindow } from '../../../app/launch/watch-window.ts';
import { openLog } from '../../../app/shell/log-file.ts';
import { temporaryFolder } from '../temporary.ts';

/** A stand-in for Electron's program file: a script that does what a window may do. */
function windowThat(script: string): [string, string] {
  const path = join(temporaryFolder(), 'window.mjs');
  writeFileSync(path, script);
  return [process.execPath, path];
}

const READY = "process.send({ kind: 'ready' });";
const STAY = 'setInterval(() => {}, 1000);';
const log = () => openLog(temporaryFolder());

describe('watching the window', () => {
  it('takes a window that stays silent for hung, ends it and says so', async () => {
    const run = await watchWindow(windowThat(STAY), { log: log(), readyWithinMs: 400 });
    expect(run).toMatchObject({ kind: 'not-opened', reason: expect.stringContaining('No window') });
  });

  it('ends a hung window that does not listen', async () => {
    const deaf = `process.on('SIGTERM', () => {}); ${STAY}`;
    const run = await watchWindow(windowThat(deaf), { log: log(), readyWithinMs: 400 });
    expect(run).toMatchObject({ kind: 'not-opened' });
  });

  it('takes an end before the report for a window that never came up, also with exit code 0', async () => {
    for (const [script, how] of [
      ['process.exit(0)', 'exit 0'],
      ['process.exit(7)', 'exit 7'],
      ["process.kill(process.pid, 'SIGSEGV')", 'SIGSEGV'],
    ] as const) {
      const run = await watchWindow(windowThat(script), { log: log() });
      expect(run, script).toMatchObject({ kind: 'not-opened', reason: expect.stringContaining(how) });
    }
    const run = await watchWindow(['/no/such/electron'], { log: log() });
    expect(run).toMatchObject({ kind: 'not-opened', reason: expect.stringContaining('ENOENT') });
  });

  it('keeps the last lines of its error stream, also in the log', async () => {
    const kept = log();
    const script = "console.error('FATAL: no GPU'); process.exit(1)";
    const run = await watchWindow(windowThat(script), { log: kept });
    expect(run).toMatchObject({ said: ['FATAL: no GPU'] });
    expect(readFileSync(kept.path, 'utf8')).toMatch(/window: FATAL: no GPU\n.*window: ended, exit 1\n/);
  });

  it('knows a window that was open: closed by the person, or broken off', async () => {
    const closed = await watchWindow(windowThat(READY), { log: log() });
    expect(closed).toEqual({ kind: 'closed', code: 0 });
    const broken = await watchWindow(windowThat(`${READY} process.exitCode = 3;`), { log: log() });
    expect(broken).toEqual({ kind: 'broke-off', how: 'exit 3' });
  });

  it('lets a window be as long as it likes once it has reported', async () => {
    const folder = temporaryFolder();
    const [reported, mayEnd] = [join(folder, 'reported'), join(folder, 'may-end')];
    const script = `
      import { existsSync, writeFileSync } from 'node:fs';
      process.send({ kind: 'ready' }, () => writeFileSync(${JSON.stringify(reported)}, ''));
      setInterval(() => existsSync(${JSON.stringify(mayEnd)}) && process.exit(3), 10);`;
    vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'] });
    try {
      const watching = watchWindow(windowThat(script), { log: log(), readyWithinMs: 400 });
      while (!existsSync(reported)) await pause(10);
      // The report lies in the pipe by now: two turns of the event loop read it.
      await turn();
      await turn();
      vi.advanceTimersByTime(401);
      writeFileSync(mayEnd, '');
      expect(await watching).toEqual({ kind: 'broke-off', how: 'exit 3' });
    } finally {
      vi.useRealTimers();
    }
  });

  it('hears of a refused store, of a window that is open already, and of a fault', async () => {
    const saying = (report: object) => windowThat(`process.send(${JSON.stringify(report)})`);
    expect(await watchWindow(saying({ kind: 'already-open' }), { log: log() })).toEqual({
      kind: 'already-open',
    });
    expect(await watchWindow(saying({ kind: 'refused', sentence: 'In use.' }), { log: log() })).toEqual({
      kind: 'refused',
      sentence: 'In use.',
    });
    expect(await watchWindow(saying({ kind: 'failed', detail: 'a fault' }), { log: log() })).toMatchObject({
      kind: 'not-opened',
      reason: 'a fault',
    });
    const nonsense = windowThat("process.send({ kind: 'refused' }); process.send('ready')");
    expect(await watchWindow(nonsense, { log: log() })).toMatchObject({ kind: 'not-opened' });
  });

  it('ends on Ctrl+C, however early, and opens nothing else', async () => {
    const watching = watchWindow(windowThat(STAY), { log: log() });
    setTimeout(() => process.emit('SIGINT', 'SIGINT'), 200);
    expect(await watching).toMatchObject({ kind: 'closed' });
    expect(process.listenerCount('SIGINT')).toBe(0);
  });
});

describe('what is said of the end', () => {
  it('is one sentence for each', async () => {
    const kept = log();
    expect(await runWindow(windowThat(READY), kept)).toEqual({ kind: 'ended', code: 0, sentence: null });
    const open = windowThat("process.send({ kind: 'already-open' })");
    expect(await runWindow(open, kept)).toMatchObject({
      code: 0,
      sentence: expect.stringContaining('open'),
    });
    const broken = await runWindow(windowThat(`${READY} setTimeout(() => process.exit(9), 300)`), kept);
    expect(broken).toMatchObject({ code: 1, sentence: expect.stringContaining(kept.path) });
    expect(await runWindow(windowThat(''), kept)).toMatchObject({ kind: 'unavailable', tried: true });
  });
});
