import { closeSync, existsSync, fstatSync, openSync } from 'node:fs';
import { bytesAt, readLog } from './log-pages.ts';

/** The pages of a database file as its log leaves them, without a look at its header. */
export interface PageFile {
  /** Bytes. */
  readonly pageSize: number;
  /** Pages are counted from 1. */
  readonly count: number;
  /** Null where the file ends before it. */
  page(number: number): Buffer | null;
  close(): void;
}

/** Page sizes that the format allows, bytes, the usual one first. */
export const PAGE_SIZES = [4096, 1024, 2048, 8192, 16_384, 32_768, 65_536, 512];

/** What the log says of the size of pages; null without one that reads. */
export function pageSizeOfLog(path: string): number | null {
  return readLog(`${path}-wal`)?.pageSize ?? null;
}

/** Opens a database file of pages of this size. */
export function openPages(path: string, pageSize: number): PageFile {
  const file = openSync(path, 'r');
  const log = readLog(`${path}-wal`);
  const places = log?.pageSize === pageSize ? log.places : new Map<number, number>();
  const logFile = places.size > 0 && existsSync(`${path}-wal`) ? openSync(`${path}-wal`, 'r') : null;
  // A file that is cut off in the middle of a page has lost the rest of it.
  const inFile = Math.floor(fstatSync(file).size / pageSize);
  return {
    pageSize,
    count: Math.max(inFile, ...places.keys()),
    page(number) {
      const place = places.get(number);
      if (place !== undefined && logFile !== null) return bytesAt(logFile, place, pageSize);
      return bytesAt(file, (number - 1) * pageSize, pageSize);
    },
    close() {
      closeSync(file);
      if (logFile !== null) closeSync(logFile);
    },
  };
}
