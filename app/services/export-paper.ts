import type { CallOutput, ParsedInput } from '../contract/contract.ts';
import type { CallError, CallResult } from '../contract/result.ts';
import { type ExportedFile, exportWork, stepExport } from '../export/export-file.ts';
import { loadSolidGeometry } from '../export/solids/solid-geometry.ts';
import { translatorOf } from '../language/spoken.ts';
import { errorCode } from '../shell/error-code.ts';
import { faultForLog, type Log } from '../shell/log-file.ts';

import { done, type Program, refused } from './program.ts';
import { SENTENCES } from './sentences.ts';

/**
 * Makes a sheet, templates or a take-home page and hands it over. It is whole in memory before anything is written, and
 * written whole or not at all, so that stopping it or a failing disk leaves nothing behind.
 */
export async function exportPaper(
  { shell, work, turn, log, library }: Program,
  input: ParsedInput<'paper.export'>,
): Promise<CallResult<CallOutput<'paper.export'>>> {
  const made = await madeFile({ work, turn }, input);
  if (!made) return refused('not-found', SENTENCES['nobody-there']);
  const { name, mime, bytes, unprintable } = made;
  library.exported(input.fit.seats.flatMap(({ athlete }) => athlete?.id ?? []));
  try {
    return done({ delivery: await shell.deliver({ name, mime, bytes }), unprintable: [...unprintable] });
  } catch (error) {
    return notWritten(error, log);
  }
}

/** The file that is asked for; null when nobody kneels there. STEP files are modelled in a thread of their own. */
async function madeFile(
  { work, turn }: Pick<Program, 'work' | 'turn'>,
  input: ParsedInput<'paper.export'>,
): Promise<ExportedFile | null> {
  const { wanted } = input;
  const words = await translatorOf(input.language);
  if (wanted.kind === 'solids' && wanted.format === 'step') {
    const step = stepExport(input, words);
    if (!step) return null;
    const { parts, when } = step;
    const job = { name: 'model-blocks', input: { parts, when } } as const;
    return step.archive(await turn.alone(() => work.inWorker('export', job)));
  }
  const geometry = wanted.kind === 'solids' ? await loadSolidGeometry() : null;
  const paper = exportWork(input, words, geometry);
  return paper && turn.alone(() => work.run({ what: 'export', of: paper.of }, paper.steps));
}

const why = (): readonly (readonly [RegExp, CallError['code'], string])[] => [
  [/^(ENOSPC|EDQUOT)/, 'disk-full', SENTENCES['file-disk-full']],
  [/^(EACCES|EPERM|EROFS)/, 'read-only', SENTENCES['file-read-only']],
  [/^(ENOENT|ENOTDIR|EISDIR|ENOTEMPTY|ENAMETOOLONG|EEXIST)/, 'not-found', SENTENCES['file-place-gone']],
];

function notWritten(error: unknown, log: Log): CallResult<never> {
  const code = errorCode(error);
  const known = why().find(([pattern]) => pattern.test(code));
  if (known) return refused(known[1], known[2]);
  const detail = error instanceof Error ? error.message : String(error);
  log.write(`call paper.export: ${faultForLog(error)}`);
  return refused('internal', SENTENCES['file-failed'](code || detail));
}
