import { spawnSync } from 'node:child_process';
import { closeSync, mkdirSync, openSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { evaluateFit } from '../../../core/evaluation/evaluator.ts';
import { inventedFit } from '../invented.ts';
import { temporaryFolder } from '../temporary.ts';

const ROOT = join(import.meta.dirname, '../../..');
const folder = temporaryFolder();

function evaluate(...args: string[]) {
  const { status, stdout, stderr } = spawnSync(process.execPath, ['app/headless/evaluate.ts', ...args], {
    cwd: ROOT,
    encoding: 'utf8',
  });
  return { status, stdout, lines: stderr.split('\n').filter(Boolean) };
}

function file(name: string, content: unknown): string {
  const path = join(folder, name);
  writeFileSync(path, typeof content === 'string' ? content : JSON.stringify(content));
  return path;
}

/** Refused: exit 2, nothing on standard output, plain lines only. */
function refusal(...args: string[]): string[] {
  const { status, stdout, lines } = evaluate(...args);
  expect(status).toBe(2);
  expect(stdout).toBe('');
  for (const line of lines) expect(line).not.toMatch(/^\s+at |Error|node:/);
  return lines;
}

describe('evaluate', () => {
  it('prints the whole report of a fit, the same numbers as the core gives', () => {
    const fit = inventedFit();
    const { status, stdout, lines } = evaluate(file('fit.json', fit));
    expect({ status, lines }).toEqual({ status: 0, lines: [] });
    expect(JSON.parse(stdout)).toMatchObject(JSON.parse(JSON.stringify(evaluateFit(fit))));
  });

  it('reads a fit with its defaults left out, and a byte-order mark before it', () => {
    const { seats, boat, ...rest } = inventedFit();
    const [seat] = seats;
    const short = {
      ...rest,
      boat,
      seats: [{ ...seat, pins: undefined, stroke: undefined, locks: undefined }],
    };
    const { status, stdout } = evaluate(file('short.json', `\uFEFF${JSON.stringify(short)}`));
    expect(status).toBe(0);
    expect(JSON.parse(stdout)).toMatchObject({ format: 'kneelwright-report/1', fitName: 'First try' });
  });

  it('says one line for each problem: where, what is wrong, what is allowed', () => {
    const fit = inventedFit() as unknown as {
      heelDeg: unknown;
      boat: { massKg: unknown };
      seats: { side: unknown }[];
    };
    fit.heelDeg = '3';
    fit.boat.massKg = -4;
    fit.seats[0]!.side = 'up';
    expect(refusal(file('bad.json', { ...fit, colour: 'red' }))).toEqual([
      'boat.massKg: -4 is too small; at least 1 kg',
      'seats[0].side: "up" is not known here; allowed: left, right',
      'heelDeg: “3” is not a number from -30 to 30°',
      '"colour" is not known here; allowed: format, name, boat, seats, water, heelDeg, notes',
    ]);
  });

  it('says of a hull that no boat can have why not, without a stack', () => {
    const fit = inventedFit();
    const station = (xM: number) => ({
      xM,
      section: [
        [0, 0],
        [0.2, 0.1],
        [0.25, 0.3],
      ],
    });
    const boat = { ...fit.boat, hull: { kind: 'offsets', stations: [station(0), station(0), station(1)] } };
    const lines = refusal(file('hull.json', { ...fit, boat }));
    expect(lines).toHaveLength(1);
    expect(lines).toEqual(['boat.hull.stations[1]: Same place as station 1.']);
  });

  it('refuses what is no fit at all, in one line each', () => {
    expect(refusal()).toEqual(['Needed: one fit as a JSON file.']);
    expect(refusal('a', 'b')).toHaveLength(1);
    expect(refusal('--frobnicate')).toEqual(['--frobnicate is not known.']);
    expect(refusal(join(folder, 'none.json'))[0]).toContain('no such file');
    mkdirSync(join(folder, 'dir.json'));
    expect(refusal(join(folder, 'dir.json'))[0]).toContain('is a folder');
    expect(refusal(file('text.json', 'not json\nat all'))[0]).toContain('is not a JSON object');
    expect(refusal(file('empty.json', ''))[0]).toContain('is not a JSON object');
    for (const [i, text] of ['7', 'null', '[]', '"x"'].entries()) {
      expect(refusal(file(`odd${i}.json`, text))).toEqual([expect.stringContaining('is not an object')]);
    }
    truncateSync(file('huge.json', ''), 65 * 1024 * 1024);
    expect(refusal(join(folder, 'huge.json'))[0]).toContain('larger than 64 MB');
  });

  it.runIf(process.platform === 'linux')('says that the report could not be written, and ends so', () => {
    const full = openSync('/dev/full', 'w');
    const path = file('full.json', inventedFit());
    const { status, stderr } = spawnSync(process.execPath, ['app/headless/evaluate.ts', path], {
      cwd: ROOT,
      encoding: 'utf8',
      stdio: ['ignore', full, 'pipe'],
    });
    closeSync(full);
    expect(status).toBe(1);
    expect(stderr).toMatch(/^Report not written \(ENOSPC\)\.\s/);
  });

  it.runIf(process.platform === 'linux')('does not read on for ever where a file has no end', () => {
    expect(refusal('/dev/zero')).toEqual([expect.stringContaining('does not end within 64 MB')]);
  });

  it('refuses a name with a line break or half a character in it', () => {
    const fit = inventedFit();
    expect(refusal(file('break.json', { ...fit, name: 'one\n0\nCIRCLE' }))).toEqual([
      'name: has a line break or tab',
    ]);
    expect(refusal(file('half.json', { ...fit, name: 'half \ud83d' }))[0]).toContain('half a character');
    expect(refusal(file('bell.json', { ...fit, notes: 'bell \u0007' }))[0]).toContain('control character');
  });

  it('explains itself', () => {
    const { status, stdout } = evaluate('--help');
    expect(status).toBe(0);
    expect(stdout).toContain('npm run evaluate -- FILE');
  });
});
