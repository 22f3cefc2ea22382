import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import { inventedAthlete } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFile, temporaryFolder } from '../temporary.ts';

const PASSPHRASE = 'four invented words of a test';
const NAME = 'Wenna Oskarby';

function opened() {
  const shell = createLoopbackShell(() => {});
  const folder = temporaryFolder();
  const program = openedProgram(folder, { shell });
  const answer = (name: string, input: object) => dispatch(program.program, name, input);
  const call = async (name: string, input: object) => {
    const result = await answer(name, input);
    if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
    return result.value as Record<string, string>;
  };
  const left = () => readdirSync(folder).filter((name) => name.endsWith('.part'));
  return { ...program, shell, answer, call, left };
}

describe('a bundle with a passphrase', () => {
  it('is encrypted, opens with its passphrase only, and loses nothing over a wrong one', async () => {
    const from = opened();
    await from.call('athletes.save', { athlete: inventedAthlete(NAME) });
    const { href } = await from.call('bundle.export', { passphrase: PASSPHRASE });
    const file = from.shell.fetch(href!.split('/').at(-1)!)!;
    expect(file.name).toMatch(/\.kneelwright\.age$/);
    const bytes = Buffer.from('path' in file ? readFileSync(file.path) : file.bytes);
    expect(bytes.includes('athletes.json')).toBe(false);
    from.close();

    const into = opened();
    await into.call('athletes.save', { athlete: inventedAthlete('Somebody else') });
    const upload = into.shell.accept(temporaryFile(bytes));
    const locked = await into.call('bundle.preview', { upload });
    expect(locked).toMatchObject({ kind: 'locked', wrong: false });
    const { handle } = locked;
    // What is still encrypted cannot be imported.
    expect(await into.answer('bundle.import', { handle })).toMatchObject({ ok: false });
    expect(await into.call('bundle.unlock', { handle, passphrase: 'not this one' })).toEqual({
      kind: 'locked',
      handle,
      wrong: true,
    });
    expect(await into.call('athletes.list', {})).toHaveLength(1);
    const ready = await into.call('bundle.unlock', { handle, passphrase: PASSPHRASE });
    expect(ready).toMatchObject({ kind: 'ready', changes: { athletes: { added: 1 } } });
    await into.call('bundle.import', { handle: ready.handle! });
    expect(await into.call('athletes.list', {})).toHaveLength(2);
    expect(into.left()).toEqual([]);
    into.close();
    for (const { program } of [from, into]) {
      const log = readFileSync(join(program.store.folder, 'log', 'kneelwright.log'), 'utf8');
      expect(log).toContain('start');
      expect(log).not.toContain(PASSPHRASE);
    }
  });

  it('takes no short passphrase, and says so of the field', async () => {
    const from = opened();
    expect(await from.answer('bundle.export', { passphrase: 'short' })).toMatchObject({
      ok: false,
      error: { code: 'bad-input', problems: [{ path: 'passphrase' }] },
    });
    from.close();
  });
});
