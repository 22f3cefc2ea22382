import { readdirSync, readFileSync } from 'node:fs';
import { extname, join, sep } from 'node:path';

/** A file of the built page. */
export interface BuiltFile {
  readonly path: string;
  readonly mime: string;
  /** What is in it, of a file that the next build replaces under the same name. Others are kept on the disk while a copy runs. */
  readonly kept: Buffer | null;
}

/** Names that every build has: the page and its worker. Both are small. */
const SAME_NAME = /\.html$|-worker\.js$/;

const MIME: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.wasm': 'application/wasm',
  '.tflite': 'application/octet-stream',
  '.data': 'application/octet-stream',
  '.binarypb': 'application/octet-stream',
};

/**
 * The files that a page may ask for, by their path as it stands in an address (`/assets/x.js`). Only what is listed
 * here is ever read, so no spelling of a path can lead out of the folder.
 */
export function listPageFiles(folder: string): ReadonlyMap<string, BuiltFile> {
  const files = new Map<string, BuiltFile>();
  for (const entry of readdirSync(folder, { recursive: true, withFileTypes: true })) {
    const mime = MIME[extname(entry.name)];
    if (!entry.isFile() || !mime) continue;
    const path = join(entry.parentPath, entry.name);
    const kept = SAME_NAME.test(entry.name) ? readFileSync(path) : null;
    files.set(path.slice(folder.length).split(sep).join('/').replace(/^\/*/, '/'), { path, mime, kept });
  }
  const index = files.get('/index.html');
  if (index) files.set('/', index);
  return files;
}
