import { dispatch } from '../../../app/services/dispatch.ts';
import { openedProgram } from '../opened-program.ts';
import { peakMemory } from './peak-memory.ts';

/** Opens the store in a folder, does long work in it, and says how much memory the process had at most, bytes. */
const [folder] = process.argv.slice(2) as [string];
const opened = openedProgram(folder);
const { program, close } = opened;
const { id, name } = program.store.db
  .prepare<[], { id: string; name: string }>('SELECT id, name FROM athletes ORDER BY rowid LIMIT 1')
  .get()!;
for (const [call, input] of [
  ['bundle.export', {}],
  ['athletes.previewErase', { id }],
  ['athletes.erase', { id, name }],
] as const) {
  const result = await dispatch(program, call, input);
  if (!result.ok) throw new Error(`${call}: ${result.error.message}`);
}
const left = program.store.db.prepare('SELECT count(*) FROM revisions').pluck().get();
close();
console.log(JSON.stringify({ bytes: peakMemory(), left }));
