import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { openProgram } from '../../../app/services/open-program.ts';
import { programState } from '../../../app/services/program-state.ts';
import { createFit } from '../../../app/store/fits.ts';
import { STORE_FILE } from '../../../app/store/open-store.ts';
import { inventedFit } from '../invented.ts';
import { temporaryFolder } from '../temporary.ts';

function opened(folder: string) {
  const root = join(import.meta.dirname, '../../..');
  const open = openProgram({ root, folder, shell: createLoopbackShell(() => {}) });
  if (open.kind === 'refused') throw new Error(open.sentence);
  return open;
}

const cutShort = ({ program }: ReturnType<typeof opened>) => programState(program).cutShort;

describe('whether the program came to its end the last time', () => {
  it('is so at the first start, and after it was closed', () => {
    const folder = temporaryFolder();
    const first = opened(folder);
    expect(cutShort(first)).toBe(false);
    createFit(first.program.store, inventedFit());
    first.close();
    const second = opened(folder);
    expect(cutShort(second)).toBe(false);
    second.close();
  });

  it('is not so where a crash left what it left', () => {
    const folder = temporaryFolder();
    const running = opened(folder);
    createFit(running.program.store, inventedFit());
    const crashed = temporaryFolder();
    for (const ending of ['', '-wal']) {
      copyFileSync(join(folder, STORE_FILE + ending), join(crashed, STORE_FILE + ending));
    }
    running.close();
    const again = opened(crashed);
    expect(cutShort(again)).toBe(true);
    again.close();
    const after = opened(crashed);
    expect(cutShort(after)).toBe(false);
    after.close();
  });
});
