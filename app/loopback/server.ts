import { createReadStream, rmSync } from 'node:fs';
import type { IncomingMessage, Server, ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { pipeline } from 'node:stream';
import { BUNDLE_LIMITS } from '../bundle/bundle-format.ts';
import { SESSION_HEADER } from '../contract/session.ts';
import { dispatch, failure } from '../services/dispatch.ts';
import { speakAsBrowser } from '../services/display.ts';
import { type Program, refused } from '../services/program.ts';
import { unfinishedFile } from '../services/safekeeping.ts';
import { SENTENCES } from '../services/sentences.ts';
import {
  entryAnswer,
  type FileAnswer,
  fileAnswer,
  pageAnswer,
  resultAnswer,
  type ShellAnswer,
  sentenceAnswer,
} from '../shell/answer.ts';
import { faultForLog } from '../shell/log-file.ts';
import type { BuiltFile } from '../shell/page-files.ts';
import { say } from '../shell/say.ts';
import { keepConnections } from './connection-keeper.ts';
import { DELIVERY_PATH, type LoopbackShell } from './loopback-shell.ts';
import { comesFromOwnPage, namesThisServer } from './own-page.ts';
import { parseCall } from './parse-call.ts';
import { rateLimit } from './rate-limit.ts';
import { readBody, saveBody } from './read-body.ts';
import { createSession, type Session } from './session.ts';

// An import of this module gives every one of its exports a name, its WebSocket client too, which takes 40 ms to load.
const { createServer } = process.getBuiltinModule('node:http');

const HOST = '127.0.0.1';
const ENTER_PATH = '/enter';
/** A token posted by a form, bytes. */
const ENTRY_LIMIT = 1024;
/** The largest call, bytes: a fit of four seats in a hull of many fine stations stays below it. */
export const CALL_LIMIT = 16 * 1024 * 1024;
/** The largest file a page may send, bytes. */
const UPLOAD_LIMIT = BUNDLE_LIMITS.packed;
/** Far above what a hand can cause, far below what would starve the program. */
const CALLS = { capacity: 400, perSecond: 200 };
/** Requests that show no secret and no good token. The owner's have a bucket of their own. */
const STRANGERS = { capacity: 20, perSecond: 1 };

/** What the server serves. */
export interface Served {
  readonly program: Program;
  readonly shell: LoopbackShell;
  readonly page: ReadonlyMap<string, BuiltFile>;
  /** Called when a tab has entered with a token. */
  readonly entered?: () => void;
  /** Milliseconds that run on, for the limits on requests. */
  readonly clock?: () => number;
}

/** A running loopback server. */
export interface LoopbackServer {
  readonly port: number;
  /** An address with a fresh one-time token in it, to be pasted into a browser. */
  address(): string;
  /** A fresh one-time token and where to post it, for a private file to do so. */
  entrance(): { readonly action: string; readonly token: string };
  close(): Promise<void>;
}

/** Serves the page and the contract on this computer only. Port 0 takes any free one. */
export async function serveLoopback(served: Served & { port: number }): Promise<LoopbackServer> {
  const server = createServer({ requestTimeout: 60_000, headersTimeout: 10_000 });
  await listen(server, served.port);
  const { port } = server.address() as AddressInfo;
  const origin = `http://${HOST}:${port}`;
  const session = createSession();
  const { trust } = keepConnections(server);
  const authenticated = authenticate(origin, session, served);

  async function answer(request: IncomingMessage): Promise<ShellAnswer | FileAnswer> {
    const url = URL.parse(request.url ?? '/', origin);
    if (!url) return sentenceAnswer(400, say('page.no-address'));
    const turnedAway = await authenticated(request, url);
    if (turnedAway) return turnedAway;
    if (needsSecret(url.pathname)) trust(request.socket);
    return route(served, request, url.pathname);
  }

  server.on('request', (request, response) => {
    answer(request)
      .then((answered) => send(response, answered))
      .catch((error: unknown) => {
        served.program.log.write(`server: ${faultForLog(error)}`);
        response.destroy();
      });
  });
  return {
    port,
    address: () => `${origin}/?token=${session.newToken()}`,
    entrance: () => ({ action: origin + ENTER_PATH, token: session.newToken() }),
    close: () => close(server),
  };
}

/** Decides on each request before it reaches anything: an answer turns it away, null lets it in. */
function authenticate(origin: string, session: Session, { program, entered = () => {}, clock }: Served) {
  const callAllowed = rateLimit(CALLS, clock);
  const strangerAllowed = rateLimit(STRANGERS, clock);
  const tooMany = () => leaving(resultAnswer(429, refused('not-allowed', SENTENCES['too-many'])));
  const notAllowed = () => leaving(resultAnswer(403, refused('not-allowed', SENTENCES['no-session'])));
  return async (request: IncomingMessage, url: URL): Promise<ShellAnswer | null> => {
    if (!namesThisServer(request, origin)) return ownPageOnly();
    const token = await tokenIn(request, url);
    if (token !== null) {
      // A good token is let in whatever a stranger's wrong ones have used up.
      const secret = session.exchange(token);
      if (!secret)
        return strangerAllowed() ? leaving(sentenceAnswer(403, SENTENCES['no-session'])) : tooMany();
      entered();
      await speakAsBrowser(program, request.headers['accept-language']);
      return entryAnswer(secret);
    }
    if (!comesFromOwnPage(request, origin)) return ownPageOnly();
    if (!needsSecret(url.pathname)) return null;
    if (session.admits(request.headers[SESSION_HEADER])) return callAllowed() ? null : tooMany();
    return strangerAllowed() ? notAllowed() : tooMany();
  };
}

function ownPageOnly(): ShellAnswer {
  return leaving(sentenceAnswer(403, SENTENCES['own-page-only']));
}

/** Who was turned away need not stay connected, and what else was sent need not be read. */
function leaving({ headers, ...rest }: ShellAnswer): ShellAnswer {
  return { ...rest, headers: { ...headers, connection: 'close' } };
}

/**
 * The page's own files are the same for everybody and say nothing of anybody. A delivery's address is a secret itself,
 * known to the tab that asked for it and good once.
 */
function needsSecret(path: string): boolean {
  return path === '/call' || path === '/upload';
}

/** The token that a request brings, in the page's address or posted by a private file; null if it brings none. */
async function tokenIn(request: IncomingMessage, { pathname, searchParams }: URL): Promise<string | null> {
  if (request.method === 'GET' && pathname === '/') return searchParams.get('token');
  if (request.method !== 'POST' || pathname !== ENTER_PATH) return null;
  const body = await readBody(request, ENTRY_LIMIT);
  return body.kind === 'whole' ? (new URLSearchParams(body.bytes.toString('utf8')).get('token') ?? '') : '';
}

function route(
  served: Served,
  request: IncomingMessage,
  path: string,
): ShellAnswer | FileAnswer | Promise<ShellAnswer> {
  if (request.method === 'POST' && path === '/call') return call(served, request);
  if (request.method === 'POST' && path === '/upload') return upload(served, request);
  if (request.method !== 'GET') return sentenceAnswer(405, say('page.nothing'));
  if (!path.startsWith(DELIVERY_PATH)) return pageAnswer(served.page.get(path));
  const file = served.shell.fetch(path.slice(DELIVERY_PATH.length));
  return file ? fileAnswer(file) : sentenceAnswer(404, SENTENCES['delivery-gone']);
}

async function call({ program }: Served, request: IncomingMessage): Promise<ShellAnswer> {
  if (!/^application\/json\b/.test(request.headers['content-type'] ?? '')) {
    return sentenceAnswer(415, say('page.call-type'));
  }
  const body = await readBody(request, CALL_LIMIT);
  if (body.kind !== 'whole') return tooLarge(CALL_LIMIT);
  const sent = parseCall(body.bytes.toString('utf8'));
  if (!sent) return resultAnswer(400, refused('bad-input', SENTENCES['not-a-call']));
  return resultAnswer(200, await dispatch(program, sent.name, sent.input));
}

/** A large file is never in memory as a whole: it goes into a private file beside the store, which is swept if it is left. */
async function upload({ program, shell }: Served, request: IncomingMessage): Promise<ShellAnswer> {
  if (request.headers['content-type'] !== 'application/octet-stream') {
    return sentenceAnswer(415, say('page.file-type'));
  }
  const path = unfinishedFile(program.store);
  try {
    if ((await saveBody(request, { path, maxBytes: UPLOAD_LIMIT })) !== 'whole')
      return tooLarge(UPLOAD_LIMIT);
  } catch (error) {
    return leaving(resultAnswer(500, failure(program, 'upload', error)));
  }
  return resultAnswer(200, { ok: true, value: { upload: shell.accept(path) } });
}

function tooLarge(limit: number): ShellAnswer {
  return leaving(resultAnswer(413, refused('too-large', SENTENCES['too-large'](limit / 1024 / 1024))));
}

function send(response: ServerResponse, answered: ShellAnswer | FileAnswer): void {
  if ('path' in answered) {
    sendFile(response, answered);
    return;
  }
  const { status, headers, body } = answered;
  response.writeHead(status, headers);
  response.end(body);
}

/** Piece by piece, so that a large file is never in memory; it is removed when it has been sent, or cannot be. */
function sendFile(response: ServerResponse, { status, headers, path }: FileAnswer): void {
  const file = createReadStream(path);
  file.once('open', () => response.writeHead(status, headers));
  pipeline(file, response, () => rmSync(path, { force: true }));
}

function listen(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, HOST, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

/** How long a request under way may take to finish once the program ends, milliseconds. */
const LAST_REQUEST_MS = 500;

function close(server: Server): Promise<void> {
  return new Promise((resolve) => {
    server.close(() => resolve());
    server.closeIdleConnections();
    setTimeout(() => server.closeAllConnections(), LAST_REQUEST_MS).unref();
  });
}
