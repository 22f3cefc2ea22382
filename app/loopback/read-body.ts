import { createWriteStream, rmSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { pipeline } from 'node:stream/promises';
import { errorCode } from '../shell/error-code.ts';

/** A request's body, or why it was not read to its end. */
export type Body =
  | { readonly kind: 'whole'; readonly bytes: Buffer }
  | { readonly kind: 'too-large' | 'cut-off' };

/** Reads at most `maxBytes`; what is longer is refused as soon as that shows, whatever its header promised. */
export async function readBody(request: IncomingMessage, maxBytes: number): Promise<Body> {
  if (Number(request.headers['content-length'] ?? 0) > maxBytes) return { kind: 'too-large' };
  const chunks: Buffer[] = [];
  let size = 0;
  try {
    for await (const chunk of request as AsyncIterable<Buffer>) {
      size += chunk.length;
      if (size > maxBytes) return { kind: 'too-large' };
      chunks.push(chunk);
    }
  } catch {
    return { kind: 'cut-off' };
  }
  return request.complete ? { kind: 'whole', bytes: Buffer.concat(chunks) } : { kind: 'cut-off' };
}

/** What a stream says when the other side has gone; anything else is of the file. */
const LOST = /^(ECONNRESET|ECONNABORTED|EPIPE|ABORT_ERR|ERR_STREAM_PREMATURE_CLOSE)$/;

class TooLarge extends Error {}

/** The same into a private file, piece by piece. Nothing is left of a body that was not whole. Throws what the file system says. */
export async function saveBody(
  request: IncomingMessage,
  { path, maxBytes }: { path: string; maxBytes: number },
): Promise<Body['kind']> {
  if (Number(request.headers['content-length'] ?? 0) > maxBytes) return 'too-large';
  let size = 0;
  try {
    const within = async function* (pieces: AsyncIterable<Buffer>) {
      for await (const piece of pieces) {
        size += piece.length;
        if (size > maxBytes) throw new TooLarge();
        yield piece;
      }
    };
    await pipeline(request, within, createWriteStream(path, { mode: 0o600, flags: 'wx' }));
    if (request.complete) return 'whole';
    rmSync(path, { force: true });
    return 'cut-off';
  } catch (error) {
    rmSync(path, { force: true });
    if (error instanceof TooLarge) return 'too-large';
    if (!LOST.test(errorCode(error))) throw error;
    return 'cut-off';
  }
}
