import { join } from 'node:path';
import { createLoopbackShell } from '../../app/loopback/loopback-shell.ts';
import { openProgram } from '../../app/services/open-program.ts';

const ROOT = join(import.meta.dirname, '../..');

type Asked = Parameters<typeof openProgram>[0];

/** The program on a folder, as a shell opens it; one that is refused throws. */
export function openedProgram(
  folder: string,
  { shell, clock }: Partial<Pick<Asked, 'shell' | 'clock'>> = {},
) {
  const opened = openProgram({
    root: ROOT,
    folder,
    shell: shell ?? createLoopbackShell(() => {}),
    ...(clock ? { clock } : {}),
  });
  if (opened.kind === 'refused') throw new Error(opened.sentence);
  return opened;
}
