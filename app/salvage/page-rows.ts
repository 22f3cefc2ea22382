import type { PageFile } from './page-file.ts';
import { NotInFormat, type PageValue, readRecord, readVarint } from './record.ts';

/** What a page of a b-tree holds. Source: SQLite, "Database File Format", section 1.6, "B-tree Pages". */
const KINDS: Readonly<
  Record<number, { readonly header: number; readonly cells: 'table' | 'index' | 'none' }>
> = {
  2: { header: 12, cells: 'index' },
  5: { header: 12, cells: 'none' },
  10: { header: 8, cells: 'index' },
  13: { header: 8, cells: 'table' },
};
/** Page 1 begins with the file's own header. */
const FILE_HEADER = 100;

/** Rows found, and what was there and could not be read. */
export interface FoundRows {
  /** Rows of tables, and of tables that are kept as an index (`WITHOUT ROWID`); entries of other indexes are among these. */
  readonly rows: Iterable<{ readonly from: 'table' | 'index'; readonly values: readonly PageValue[] }>;
  /** Rows of tables that were begun and could not be read; known when the rows have been gone through. */
  unreadableRows(): number;
  /** Pages that are neither empty nor part of anything that was read; likewise. */
  unreadablePages(): number;
}

/** Every row in a file's pages, whatever its header and its list of tables say. */
export function rowsInPages(file: PageFile): FoundRows {
  let unreadableRows = 0;
  const understood = new Set<number>([1]);
  function* rows() {
    for (let number = 1; number <= file.count; number++) {
      const page = file.page(number);
      const kind = page && kindOf(page, number);
      if (!page || !kind) continue;
      understood.add(number);
      if (kind.cells === 'none') continue;
      for (const at of cellPlaces(page, number, kind.header)) {
        const values = rowAt(file, page, { at, kind, chain: understood });
        if (values) yield { from: kind.cells, values };
        else if (kind.cells === 'table') unreadableRows += 1;
      }
    }
  }
  return {
    rows: rows(),
    unreadableRows: () => unreadableRows,
    unreadablePages() {
      let count = 0;
      for (let number = 1; number <= file.count; number++) {
        const page = understood.has(number) ? null : file.page(number);
        if (page && !isEmpty(page) && !isFreelist(page, file.count)) count += 1;
      }
      return count;
    },
  };
}

type Kind = (typeof KINDS)[number];

/** What kind of b-tree page this is; null if it is none, or its header contradicts itself. */
function kindOf(page: Buffer, number: number): Kind | null {
  const start = number === 1 ? FILE_HEADER : 0;
  const kind = KINDS[page[start]!];
  if (!kind) return null;
  const cells = page.readUInt16BE(start + 3);
  const end = start + kind.header + 2 * cells;
  // 0 stands for 65 536, which only a page of that size can mean.
  const content = page.readUInt16BE(start + 5) || 65_536;
  return end <= page.length && content >= end && content <= page.length ? kind : null;
}

function cellPlaces(page: Buffer, number: number, header: number): number[] {
  const start = number === 1 ? FILE_HEADER : 0;
  const first = start + header;
  return Array.from({ length: page.readUInt16BE(start + 3) }, (_, i) => page.readUInt16BE(first + 2 * i));
}

function rowAt(
  file: PageFile,
  page: Buffer,
  { at, kind, chain }: { at: number; kind: Kind; chain: Set<number> },
): PageValue[] | null {
  try {
    // A cell of an inner page begins with the number of the page below it.
    const size = readVarint(page, kind.header === 12 ? at + 4 : at);
    const start = kind.cells === 'table' ? afterVarint(page, size.next) : size.next;
    const local = localLength(size.value, page.length, kind.cells === 'table' ? 'table' : 'index');
    if (start + local > page.length) throw new NotInFormat('a cell is cut off');
    const begun = page.subarray(start, start + local);
    if (local === size.value) return readRecord(begun);
    if (start + local + 4 > page.length) throw new NotInFormat('a cell is cut off');
    const next = page.readUInt32BE(start + local);
    return readRecord(Buffer.concat([begun, overflow(file, { next, length: size.value - local, chain })]));
  } catch (error) {
    if (error instanceof NotInFormat) return null;
    throw error;
  }
}

/** A row's number may be beyond 2^53, and is not needed. */
function afterVarint(page: Buffer, at: number): number {
  for (let i = 0; i < 9; i++) if ((page[at + i] ?? 0) < 0x80 || i === 8) return at + i + 1;
  throw new NotInFormat('a number does not end');
}

/** How much of a payload lies in the page itself; the rest follows in overflow pages. Source: section 1.6, same document. */
function localLength(payload: number, usable: number, tree: 'table' | 'index'): number {
  const most = tree === 'table' ? usable - 35 : Math.floor(((usable - 12) * 64) / 255) - 23;
  if (payload <= most) return payload;
  const least = Math.floor(((usable - 12) * 32) / 255) - 23;
  const wanted = least + ((payload - least) % (usable - 4));
  return wanted <= most ? wanted : least;
}

/** The rest of a payload, out of the chain of pages that begins with `next`. */
function overflow(
  file: PageFile,
  { next, length, chain }: { next: number; length: number; chain: Set<number> },
): Buffer {
  const parts: Buffer[] = [];
  const used: number[] = [];
  let left = length;
  if (length > file.count * file.pageSize) throw new NotInFormat('a row is larger than its file');
  for (let number = next; left > 0; ) {
    const page = number > 0 ? file.page(number) : null;
    if (!page) throw new NotInFormat('a chain breaks off');
    const part = page.subarray(4, 4 + Math.min(left, page.length - 4));
    parts.push(part);
    used.push(number);
    left -= part.length;
    number = page.readUInt32BE(0);
    if (left === 0 && number !== 0) throw new NotInFormat('a chain goes on after its end');
  }
  for (const number of used) chain.add(number);
  return Buffer.concat(parts);
}

function isEmpty(page: Buffer): boolean {
  return page.every((byte) => byte === 0);
}

/** A page that lists free pages. Source: section 1.5, "The Freelist". */
function isFreelist(page: Buffer, count: number): boolean {
  const length = page.readUInt32BE(4);
  if (page.readUInt32BE(0) > count || 8 + 4 * length > page.length) return false;
  for (let i = 0; i < length; i++) {
    const free = page.readUInt32BE(8 + 4 * i);
    if (free === 0 || free > count) return false;
  }
  return true;
}
