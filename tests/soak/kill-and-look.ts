import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { damageOf } from '../../app/store/integrity.ts';
import { STORE_FILE } from '../../app/store/open-store.ts';
import { type ChildProgram, startChild } from '../app/child/child-program.ts';
import { value } from '../app/shells/way-in.ts';
import { random32 } from '../random32.ts';
import { scriptedEditor } from './scripted-editor.ts';

/** What a run of kills found. */
export interface SoakResult {
  readonly kills: number;
  /** Edits that the program said it had kept. */
  readonly acknowledgedEdits: number;
  /** Acknowledged edits that were not there after the restart. */
  readonly lostEdits: number;
  /** Starts that found the store damaged, rows that did not read, and the file if it fails its last check. */
  readonly damagedFiles: number;
  readonly seed: number;
  readonly seconds: number;
}

/**
 * The program is killed after fewer than this many edits of one start, so that a slow machine edits as much as a fast one,
 * and within this time after the last of them, while the next is under way.
 */
const MOST_EDITS = 60;
const MOST_MS_INTO_THE_NEXT = 12;

/**
 * Starts the program in a process of its own, edits, kills it (SIGKILL) at a random moment, starts it again on what it
 * left and looks for every edit that had been acknowledged; `kills` times. A kill is not a power cut: it proves that
 * nothing acknowledged is still in the process's hands, not that the disk keeps its word.
 */
export async function killAndLook(run: {
  kills: number;
  seed: number;
  report?: (line: string) => void;
}): Promise<SoakResult> {
  const { kills, seed, report = () => {} } = run;
  const random = random32(seed);
  const root = mkdtempSync(join(tmpdir(), 'kneelwright-soak-'));
  const folder = join(root, 'data');
  const editor = scriptedEditor(random);
  const began = performance.now();
  let lostEdits = 0;
  let damagedFiles = 0;

  async function look(program: ChildProgram, which: 'touched' | 'all'): Promise<void> {
    const { recovery, problems } = value(await program.call('program.state', {}));
    damagedFiles += (recovery ? 1 : 0) + problems.length;
    const lost = await editor.lost(program, which);
    lostEdits += lost.length;
    for (const what of lost) report(`LOST ${what}`);
  }

  for (let kill = 1; kill <= kills; kill++) {
    const program = await startChild(folder);
    if (kill > 1) await look(program, 'touched');
    const after = Math.floor(MOST_EDITS * random());
    const intoNext = MOST_MS_INTO_THE_NEXT * random();
    const end = () => setTimeout(() => program.process.kill('SIGKILL'), intoNext);
    await editor.edit(program, { after, kill: end });
    await program.ended;
    if (kill % 20 === 0)
      report(`${kill} kills, ${editor.acknowledged()} edits acknowledged, ${lostEdits} lost`);
  }
  const last = await startChild(folder);
  await look(last, 'all');
  last.process.kill('SIGTERM');
  await last.ended;
  const file = new Database(join(folder, STORE_FILE));
  damagedFiles += damageOf(file, 'whole') === null ? 0 : 1;
  file.close();
  rmSync(root, { recursive: true, force: true });
  const seconds = Math.round((performance.now() - began) / 100) / 10;
  return { kills, acknowledgedEdits: editor.acknowledged(), lostEdits, damagedFiles, seed, seconds };
}
