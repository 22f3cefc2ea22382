import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { faultForLog, lastLogLines, logPath, openLog } from '../../../app/shell/log-file.ts';
import { temporaryFolder } from '../temporary.ts';

describe('the log', () => {
  it('keeps lines with their instants, and gives the last ones', () => {
    const folder = temporaryFolder();
    expect(lastLogLines(folder, 3)).toEqual([]);
    const log = openLog(folder, () => Date.UTC(2026, 10, 26, 8));
    for (const word of ['one', 'two', 'three']) log.write(word);
    expect(lastLogLines(folder, 2)).toEqual([
      '2026-11-26T08:00:00.000Z two',
      '2026-11-26T08:00:00.000Z three',
    ]);
  });

  it.runIf(process.platform !== 'win32')('is nobody else to read', () => {
    const folder = temporaryFolder();
    const log = openLog(folder);
    log.write('a line');
    expect(statSync(log.path).mode & 0o777).toBe(0o600);
    expect(statSync(join(log.path, '..')).mode & 0o777).toBe(0o700);
  });

  it('is put aside when it is large, and two older ones are kept', () => {
    const folder = temporaryFolder();
    const log = openLog(folder);
    for (let round = 1; round <= 4; round++) {
      log.write(`round ${round}`);
      writeFileSync(log.path, `round ${round} ${'x'.repeat(300 * 1024)}`);
    }
    log.write('now');
    expect(readFileSync(log.path, 'utf8')).toMatch(/now\n$/);
    expect(readFileSync(`${log.path}.1`, 'utf8')).toMatch(/^round 4/);
    expect(readFileSync(`${log.path}.2`, 'utf8')).toMatch(/^round 3/);
    expect(existsSync(`${log.path}.3`)).toBe(false);
  });

  it('says nothing of what was entered, nor of the home folder, and keeps to one line', () => {
    const folder = temporaryFolder();
    const log = openLog(folder);
    try {
      JSON.parse('{"name": Anna Example}');
    } catch (error) {
      log.write(`call boats.save: ${faultForLog(error)}`);
    }
    log.write(`one\ntwo ${homedir()}/club`);
    const text = readFileSync(log.path, 'utf8');
    expect(text).toMatch(/call boats\.save: SyntaxError at /);
    expect(text).not.toContain('Anna');
    expect(text).toMatch(/one two ~\/club\n$/);
    expect(text.split('\n')).toHaveLength(3);
  });

  it('does not mind where it cannot be written', () => {
    const folder = temporaryFolder();
    mkdirSync(logPath(folder), { recursive: true });
    expect(() => openLog(folder).write('nowhere')).not.toThrow();
  });
});
