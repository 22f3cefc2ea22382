import { copyFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { programState } from '../../../app/services/program-state.ts';
import { createFit } from '../../../app/store/fits.ts';
import { STORE_FILE } from '../../../app/store/open-store.ts';
import { inventedFit } from '../invented.ts';
import { openedProgram } from '../opened-program.ts';
import { temporaryFolder } from '../temporary.ts';

const cutShort = ({ program }: ReturnType<typeof openedProgram>) => programState(program).cutShort;

describe('whether the program came to its end the last time', () => {
  it('is so at the first start, and after it was closed', () => {
    const folder = temporaryFolder();
    const first = openedProgram(folder);
    expect(cutShort(first)).toBe(false);
    createFit(first.program.store, inventedFit());
    first.close();
    const second = openedProgram(folder);
    expect(cutShort(second)).toBe(false);
    second.close();
  });

  it('is not so where a crash left what it left', () => {
    const folder = temporaryFolder();
    const running = openedProgram(folder);
    createFit(running.program.store, inventedFit());
    const crashed = temporaryFolder();
    for (const ending of ['', '-wal']) {
      copyFileSync(join(folder, STORE_FILE + ending), join(crashed, STORE_FILE + ending));
    }
    running.close();
    const again = openedProgram(crashed);
    expect(cutShort(again)).toBe(true);
    again.close();
    const after = openedProgram(crashed);
    expect(cutShort(after)).toBe(false);
    after.close();
  });
});
