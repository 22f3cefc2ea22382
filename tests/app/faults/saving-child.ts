/** Opens the program on a folder in a process of its own, saves in every way and prints what became of it as JSON. */
import { join } from 'node:path';
import { createLoopbackShell } from '../../../app/loopback/loopback-shell.ts';
import { openProgram } from '../../../app/services/open-program.ts';
import { saveInEveryWay } from './saves.ts';

const [folder, fitId, athleteId] = process.argv.slice(2);
const shell = createLoopbackShell(() => {});
const opened = openProgram({ root: join(import.meta.dirname, '../../..'), folder: folder!, shell });
if (opened.kind === 'refused') {
  console.log(JSON.stringify({ refused: opened.sentence }));
} else {
  const saved = await saveInEveryWay(opened.program, { fitId: fitId!, athleteId: athleteId! });
  opened.close();
  console.log(JSON.stringify({ saved }));
}
