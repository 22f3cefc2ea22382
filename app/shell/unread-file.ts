import type { MessageKey } from '../language/messages.ts';
import { errorCode } from './error-code.ts';
import { say } from './say.ts';

const FILE_PROBLEMS: Readonly<Record<string, MessageKey>> = {
  ENOENT: 'evaluate.why.missing',
  ENOTDIR: 'evaluate.why.missing',
  EISDIR: 'evaluate.why.folder',
  EACCES: 'evaluate.why.denied',
  EPERM: 'evaluate.why.denied',
  ENAMETOOLONG: 'evaluate.why.long',
};

/** Says that a file cannot be read, and why, by the code of the error. */
export function unreadFile(file: string, error: unknown): string {
  const code = errorCode(error);
  return say('evaluate.unread', { file, why: say(FILE_PROBLEMS[code] ?? 'evaluate.why.other', { code }) });
}
