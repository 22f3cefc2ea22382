import type { IncomingMessage } from 'node:http';

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
