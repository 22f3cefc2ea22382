import { readFileSync } from 'node:fs';
import { unzipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../app/services/dispatch.ts';
import type { Program } from '../../../app/services/program.ts';
import { createFit } from '../../../app/store/fits.ts';
import { atomically } from '../../../app/store/store.ts';
import { cases } from '../../cases.ts';
import { inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFile, temporaryFolder } from '../temporary.ts';

const FITS = cases(60, 400);

function filledProgram(fits: number) {
  const shell = createLoopbackShell(() => {});
  const opened = openedProgram(temporaryFolder(), { shell });
  const { store } = opened.program;
  const ids = atomically(store, () =>
    Array.from({ length: fits }, (_, i) => createFit(store, inventedFit({ name: `Fit ${i}` })).id),
  );
  const call = async (name: string, input: object) => {
    const result = await dispatch(opened.program, name, input);
    if (!result.ok) throw new Error(`${result.error.code}: ${result.error.message}`);
    return result.value as Record<string, string>;
  };
  const exported = async () => {
    const { href } = await call('bundle.export', {});
    const file = shell.fetch(href!.split('/').at(-1)!)!;
    return 'bytes' in file ? file.bytes : readFileSync(file.path);
  };
  return { ...opened, shell, ids, call, exported };
}

/** Waits until a long piece of work has done something and is not done. */
async function underWay({ work }: Program): Promise<void> {
  while (!work.progress()?.done) await new Promise((resolve) => setImmediate(resolve));
}

describe('long work on bundles', () => {
  it('keeps a draft that is saved while a bundle is being read out of an import that is then taken back', async () => {
    const from = filledProgram(FITS);
    const bytes = await from.exported();
    const into = filledProgram(1);
    const upload = into.shell.accept(temporaryFile(bytes));
    const preview = into.call('bundle.preview', { upload });
    await underWay(into.program);
    const draft = into.call('drafts.save', { id: into.ids[0], fit: inventedFit({ padAftM: 0.22 }) });
    expect(await preview).toMatchObject({ kind: 'ready', changes: { fits: { added: FITS } } });
    await draft;
    expect(await into.call('fits.open', { id: into.ids[0] })).toMatchObject({
      fit: { seats: [{ kneePad: { aftM: 0.22 } }] },
    });
    expect(await into.call('fits.list', {})).toHaveLength(1);
    from.close();
    into.close();
  });

  it('never exports what an import may still take back', async () => {
    const from = filledProgram(FITS);
    const bytes = await from.exported();
    const into = filledProgram(1);
    const upload = into.shell.accept(temporaryFile(bytes));
    const preview = into.call('bundle.preview', { upload });
    const [out] = await Promise.all([into.exported(), preview]);
    expect(Object.keys(unzipSync(out)).filter((name) => name.startsWith('fits/'))).toHaveLength(1);
    from.close();
    into.close();
  });

  it('says how far it is, can be stopped, and has then changed nothing', async () => {
    const from = filledProgram(FITS);
    const bytes = await from.exported();
    const into = filledProgram(0);
    const upload = into.shell.accept(temporaryFile(bytes));
    const preview = dispatch(into.program, 'bundle.preview', { upload });
    await underWay(into.program);
    expect(await into.call('work.progress', {})).toMatchObject({ what: 'read-bundle' });
    expect(await into.call('work.cancel', {})).toEqual({ asked: true });
    expect(await preview).toMatchObject({ ok: false, error: { code: 'cancelled' } });
    expect(await into.call('fits.list', {})).toEqual([]);
    from.close();
    into.close();
  });

  it('lets drafts through while everything is exported', async () => {
    const from = filledProgram(FITS);
    let finished = false;
    const exporting = from.exported().then(() => {
      finished = true;
    });
    await underWay(from.program);
    await from.call('drafts.save', { id: from.ids[1]!, fit: inventedFit() });
    expect(finished).toBe(false);
    await exporting;
    from.close();
  });

  it('lets everything be read and edited while it imports', async () => {
    const from = filledProgram(FITS);
    const into = filledProgram(1);
    const upload = into.shell.accept(temporaryFile(await from.exported()));
    const { handle } = await into.call('bundle.preview', { upload });
    const order: string[] = [];
    const importing = into.call('bundle.import', { handle }).then(() => order.push('import'));
    // From here on it is taken in: each fit is an item.
    while (into.program.work.progress()?.of !== FITS) await new Promise((resolve) => setImmediate(resolve));
    const fit = inventedFit({ padAftM: 0.23 });
    await into.call('drafts.save', { id: into.ids[0], fit });
    order.push('edit');
    await importing;
    expect(order).toEqual(['edit', 'import']);
    expect(await into.call('fits.list', { limit: 1000 })).toHaveLength(FITS + 1);
    const opened = await into.call('fits.open', { id: into.ids[0] });
    expect(opened).toMatchObject({ fit: { seats: [{ kneePad: { aftM: 0.23 } }] } });
    from.close();
    into.close();
  });

  it.each(['import', 'bring-back', 'replace'] as const)(
    'has changed nothing when %s is stopped',
    async (what) => {
      const from = filledProgram(FITS);
      const into = filledProgram(what === 'import' ? 1 : FITS);
      const upload = into.shell.accept(temporaryFile(await from.exported()));
      const start = async () => {
        if (what !== 'import') return { how: what, ...(await into.call('backups.take', {})) };
        return into.call('bundle.preview', { upload });
      };
      const { handle, name, how } = (await start()) as Record<string, string>;
      const before = await into.call('fits.list', { limit: 1000 });
      const long =
        what === 'import'
          ? dispatch(into.program, 'bundle.import', { handle })
          : dispatch(into.program, 'backups.restore', { name, how });
      while (!['import', 'restore'].includes(into.program.work.progress()?.what ?? ''))
        await new Promise((resolve) => setImmediate(resolve));
      await into.call('work.cancel', {});
      expect(await long).toMatchObject({ ok: false, error: { code: 'cancelled' } });
      expect(await into.call('fits.list', { limit: 1000 })).toEqual(before);
      await into.call('drafts.save', { id: into.ids[0], fit: inventedFit({ padAftM: 0.2 }) });
      from.close();
      into.close();
    },
  );
});
