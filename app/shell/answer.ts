import { randomBytes } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { CallResult } from '../contract/result.ts';
import { SESSION_KEY } from '../contract/session.ts';
import type { BuiltFile } from './page-files.ts';
import { FILE_POLICY, GUARD_HEADERS, guardPage } from './page-policy.ts';
import { say } from './say.ts';
import type { OutgoingFile, OutgoingPath } from './shell.ts';

/** What a page gets back, whichever shell sends it. Every answer carries the guard headers and a content policy. */
export interface ShellAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: string | Uint8Array<ArrayBufferLike>;
}

/** An answer whose body is a file, to be sent piece by piece and then removed. */
export interface FileAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly path: string;
}

function answer(
  status: number,
  mime: string,
  rest: { body: ShellAnswer['body']; headers?: Record<string, string> },
): ShellAnswer {
  return {
    status,
    body: rest.body,
    headers: {
      ...GUARD_HEADERS,
      'content-security-policy': FILE_POLICY,
      'content-type': mime,
      ...rest.headers,
    },
  };
}

/** One sentence as plain text. */
export function sentenceAnswer(status: number, sentence: string): ShellAnswer {
  return answer(status, 'text/plain; charset=utf-8', { body: `${sentence}\n` });
}

/** A call's result as JSON. */
export function resultAnswer(status: number, result: CallResult<unknown>): ShellAnswer {
  return answer(status, 'application/json; charset=utf-8', { body: JSON.stringify(result) });
}

/** A file of the built page. Read afresh each time; the page itself goes out with a nonce of its own. */
export function pageAnswer(file: BuiltFile | undefined): ShellAnswer {
  if (!file) return sentenceAnswer(404, say('page.no-file'));
  const body = file.kept ?? readFileSync(file.path);
  if (!file.mime.startsWith('text/html')) return answer(200, file.mime, { body });
  const { html, policy } = guardPage(body.toString('utf8'));
  return answer(200, file.mime, { body: html, headers: { 'content-security-policy': policy } });
}

/**
 * A page that keeps a tab's secret in that tab and goes on to the program, at the place in it that the address names after `#`.
 * Neither another tab nor another server on this computer gets to see the secret.
 */
export function entryAnswer(secret: string): ShellAnswer {
  const nonce = randomBytes(16).toString('base64url');
  const script = `sessionStorage.setItem(${JSON.stringify(SESSION_KEY)}, ${JSON.stringify(secret)}); location.replace('/' + location.hash);`;
  const body = `<!doctype html><html lang="en"><head><meta charset="utf-8"><title>Kneelwright</title></head><body><script nonce="${nonce}">${script}</script></body></html>`;
  const policy = `default-src 'none'; script-src 'nonce-${nonce}'; base-uri 'none'; frame-ancestors 'none'`;
  return answer(200, 'text/html; charset=utf-8', { body, headers: { 'content-security-policy': policy } });
}

/** A file to be kept by the browser under its own name. */
export function fileAnswer(file: OutgoingFile | OutgoingPath): ShellAnswer | FileAnswer {
  const disposition = `attachment; filename*=UTF-8''${encodeURIComponent(file.name.toWellFormed())}`;
  const body = 'bytes' in file ? file.bytes : '';
  const answered = answer(200, file.mime, { body, headers: { 'content-disposition': disposition } });
  if ('bytes' in file) return answered;
  return { status: answered.status, headers: answered.headers, path: file.path };
}
