import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';

/** Where copies of this program that run are marked, each by its process's number (`start.js`). */
const RUNNING = 'app/dist/running';
const BUILDING = 'app/dist/building-';
/** Names what the newest build made: beside it there may be files of older ones. */
const LIST = 'files.txt';

/** The folder in which this process builds a part before it takes its place: on the same disk, so that a rename moves a file. */
export function buildingFolder(root: string, part: string): string {
  const folder = join(root, `${BUILDING}${process.pid}-${part}`);
  rmSync(folder, { recursive: true, force: true });
  return folder;
}

/**
 * Moves a whole build into its place, `last` after all others. Nobody meets a file that is half written. A file of the build before goes
 * only when no other copy of the program runs: that one may still load it.
 */
export function placeBuild(
  root: string,
  { from, to, last }: { from: string; to: string; last: string },
): void {
  const files = filesBelow(from);
  writeFileSync(join(from, LIST), files.join('\n'));
  files.push(LIST);
  for (const file of [...files.filter((one) => one !== last), last]) {
    const place = join(to, file);
    mkdirSync(dirname(place), { recursive: true });
    if (file === last || !isSame(join(from, file), place)) renameSync(join(from, file), place);
  }
  rmSync(from, { recursive: true, force: true });
  sweepBroken(root);
  if (anotherRuns(root)) return;
  for (const file of filesBelow(to)) if (!files.includes(file)) rmSync(join(to, file), { force: true });
}

/** Whether another copy of the program, started from this folder, runs now. Marks of copies that were killed are removed. */
export function anotherRuns(root: string): boolean {
  const marks = existsSync(join(root, RUNNING)) ? readdirSync(join(root, RUNNING)) : [];
  const alive = marks.filter((mark) => {
    if (isAlive(Number(mark))) return true;
    rmSync(join(root, RUNNING, mark), { force: true });
    return false;
  });
  return alive.some((mark) => Number(mark) !== process.pid);
}

/** Removes what builds left that were killed. */
function sweepBroken(root: string): void {
  const folder = join(root, dirname(BUILDING));
  const begins = BUILDING.slice(dirname(BUILDING).length + 1);
  for (const name of readdirSync(folder)) {
    const builder = name.startsWith(begins) && Number.parseInt(name.slice(begins.length), 10);
    if (builder && !isAlive(builder)) rmSync(join(folder, name), { recursive: true, force: true });
  }
}

function isAlive(pid: number): boolean {
  try {
    return process.kill(pid, 0);
  } catch (error) {
    // A process of somebody else's may not be asked, and runs.
    return (error as NodeJS.ErrnoException).code === 'EPERM';
  }
}

function isSame(one: string, other: string): boolean {
  return existsSync(other) && readFileSync(one).equals(readFileSync(other));
}

function filesBelow(folder: string): string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => relative(folder, join(entry.parentPath, entry.name)));
}
