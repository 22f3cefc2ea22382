import { spawnSync } from 'node:child_process';
import { isBuilt, noteBuild, PROGRAM } from './built-from.ts';

// Before the tests: builds the page and the desktop program, unless they were built from these very sources.
if (!isBuilt(PROGRAM)) {
  const { status } = spawnSync('npm run -s build', { cwd: PROGRAM.root, shell: true, stdio: 'inherit' });
  if (status === 0) noteBuild(PROGRAM);
  process.exitCode = status ?? 1;
}
