import { describe, expect, it } from 'vitest';
import { parseOptions } from '../../../app/launch/options.ts';
import { usage } from '../../../app/launch/usage.ts';

describe('the command line of npm start', () => {
  it('asks for nothing when nothing is said', () => {
    expect(parseOptions([])).toEqual({
      kind: 'start',
      options: { shell: null, port: 0, data: null, browser: true },
    });
  });

  it('reads every option', () => {
    expect(parseOptions(['--shell', 'loopback', '--port', '8123', '--data', 'd', '--no-browser'])).toEqual({
      kind: 'start',
      options: { shell: 'loopback', port: 8123, data: 'd', browser: false },
    });
    expect(parseOptions(['--shell=electron'])).toMatchObject({ options: { shell: 'electron' } });
  });

  it.each([
    [['--shell', 'window'], '--shell window is not known: electron or loopback'],
    [['--port', '70000'], '--port 70000 is not from 1 to 65535'],
    [['--port', '-1'], ''],
    [['--port', '1e3'], '--port 1e3 is not from 1 to 65535'],
    [['--data', ''], '--data needs a folder'],
    [['--dta', 'x'], '--dta is not known'],
    [['extra'], 'extra is not known'],
    [['--port'], ''],
  ])('refuses %j in one line that says where help is', (args, part) => {
    const parsed = parseOptions(args);
    if (parsed.kind !== 'wrong') throw new Error('not refused');
    expect(parsed.sentence).toContain(part);
    expect(parsed.sentence).toMatch(/See: npm start -- --help$/);
    expect(parsed.sentence).not.toContain('\n');
  });

  it('has help that names every option', () => {
    expect(parseOptions(['--help'])).toEqual({ kind: 'help' });
    for (const name of ['--shell electron', '--shell loopback', '--port', '--data DIR', '--no-browser']) {
      expect(usage()).toContain(name);
    }
  });
});
