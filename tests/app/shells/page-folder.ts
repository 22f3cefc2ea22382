import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Writes the least that counts as a built page. */
export function writePage(folder: string): string {
  mkdirSync(join(folder, 'assets'), { recursive: true });
  writeFileSync(join(folder, 'index.html'), '<!doctype html><html><head><title>Bench</title></head></html>');
  writeFileSync(join(folder, 'assets/page.js'), 'export {};');
  writeFileSync(join(folder, 'notes.secret'), 'of no kind that a page may ask for');
  return folder;
}
