import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createLoopbackShell } from '../../../../app/loopback/loopback-shell.ts';
import { dispatch } from '../../../../app/services/dispatch.ts';
import { atomicWrite } from '../../../../app/shell/atomic-write.ts';
import { inventedFit } from '../../invented.ts';
import { openedProgram } from '../../opened-program.ts';
import { temporaryFolder } from '../../temporary.ts';

/** The solids of an invented fit as the program itself hands them over: where they lie, and what is in them. */
export async function exportedSolids(
  format: '3mf' | 'stl' | 'step',
): Promise<{ path: string; bytes: Uint8Array }> {
  const folder = temporaryFolder();
  const shell = {
    ...createLoopbackShell(() => {}),
    async deliver(file: { name: string; bytes?: Uint8Array }) {
      const path = join(folder, file.name);
      atomicWrite(path, file.bytes!);
      return { kind: 'saved' as const, path };
    },
  };
  const opened = openedProgram(temporaryFolder(), { shell });
  const result = await dispatch(opened.program, 'paper.export', {
    fit: inventedFit(),
    revision: { number: 3, keptAt: '2026-05-04T16:20:00Z' },
    wanted: { kind: 'solids', seat: 0, format },
  });
  opened.close();
  if (!result.ok) throw new Error(result.error.message);
  const { path } = (result.value as { delivery: { path: string } }).delivery;
  return { path, bytes: readFileSync(path) };
}
