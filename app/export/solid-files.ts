import { zipSync } from 'fflate';
import { blockSolids } from '../../core/setout/block-solids.ts';
import type { SeatSetOut } from '../../core/setout/set-out.ts';
import { type SheetStamp, stampLine } from '../../core/setout/sheet-stamp.ts';
import type { ExportedFile, ExportWork } from './export-file.ts';
import { cutSolid, type SolidGeometry } from './solids/solid-geometry.ts';
import { stlOf } from './solids/stl.ts';
import { threeMfOf } from './solids/three-mf.ts';

/** What solids are made with. */
interface SolidsWanted {
  readonly geometry: SolidGeometry;
  readonly format: '3mf' | 'stl';
  readonly stamp: SheetStamp;
  readonly name: (what: string, ending: string) => string;
  /** What archives are dated with. */
  readonly when: Date;
}

/** The blocks of a seat as solids, one file a part, all in one archive; null where every block lies on the shelf. */
export function solidFiles(out: SeatSetOut, wanted: SolidsWanted): ExportWork | null {
  const of = blockSolids(out).length;
  return of === 0 ? null : { of, steps: steps(out, wanted) };
}

function* steps(out: SeatSetOut, wanted: SolidsWanted): Generator<void, ExportedFile> {
  const { geometry, format, stamp, name, when } = wanted;
  const { words } = out.work;
  const entries: Record<string, Uint8Array> = {};
  for (const block of blockSolids(out)) {
    const solid = cutSolid(geometry, block);
    const what = words.say(`solid.${block.id}`, { side: out.kneels });
    const title = words.say('solid.title', { what, whose: stampLine(stamp, words) });
    entries[name(what, format)] = format === 'stl' ? stlOf(solid) : threeMfOf(solid, title, when);
    yield;
  }
  const bytes = zipSync(entries, { mtime: when });
  return { name: name(words.say('solid.file'), 'zip'), mime: 'application/zip', bytes, unprintable: [] };
}
