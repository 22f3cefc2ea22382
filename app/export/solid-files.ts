import { zipSync } from 'fflate';
import { type BlockForm, blockForms } from '../../core/setout/block-forms.ts';
import { blockSolids } from '../../core/setout/block-solids.ts';
import type { SeatSetOut } from '../../core/setout/set-out.ts';
import { type SheetStamp, stampLine } from '../../core/setout/sheet-stamp.ts';
import type { ExportedFile, ExportWork } from './export-file.ts';
import { cutSolid, type SolidGeometry } from './solids/solid-geometry.ts';
import { stlOf } from './solids/stl.ts';
import { threeMfOf } from './solids/three-mf.ts';

/** What the files of a seat's solids are named and dated with. */
export interface SolidNaming {
  readonly stamp: SheetStamp;
  readonly name: (what: string, ending: string) => string;
  /** What archives are dated with. */
  readonly when: Date;
}

/** What solids of triangles are made with. */
interface SolidsWanted extends SolidNaming {
  readonly geometry: SolidGeometry;
  readonly format: '3mf' | 'stl';
}

/** The blocks of a seat as solids, one file a part, all in one archive; null where every block lies on the shelf. */
export function solidFiles(out: SeatSetOut, wanted: SolidsWanted): ExportWork | null {
  const of = blockSolids(out).length;
  return of === 0 ? null : { of, steps: steps(out, wanted) };
}

function* steps(out: SeatSetOut, wanted: SolidsWanted): Generator<void, ExportedFile> {
  const { geometry, format, when } = wanted;
  const entries: Record<string, Uint8Array> = {};
  for (const block of blockSolids(out)) {
    const solid = cutSolid(geometry, block);
    const { file, title } = named(out, block, { ...wanted, format });
    entries[file] = format === 'stl' ? stlOf(solid) : threeMfOf(solid, title, when);
    yield;
  }
  return archive(out, entries, wanted);
}

/** A part's file, and the line that says what it is and whose. */
function named(
  out: SeatSetOut,
  { id }: Pick<BlockForm, 'id'>,
  { stamp, name, format }: SolidNaming & { format: '3mf' | 'stl' | 'step' },
): { file: string; title: string } {
  const { words } = out.work;
  const what = words.say(`solid.${id}`, { side: out.kneels });
  return {
    file: name(what, format),
    title: words.say('solid.title', { what, whose: stampLine(stamp, words) }),
  };
}

function archive(
  out: SeatSetOut,
  entries: Readonly<Record<string, Uint8Array>>,
  { name, when }: SolidNaming,
): ExportedFile {
  const bytes = zipSync({ ...entries }, { mtime: when });
  const file = name(out.work.words.say('solid.file'), 'zip');
  return { name: file, mime: 'application/zip', bytes, unprintable: [] };
}

/** STEP files of a seat's blocks in two steps: what the modeller is given, and the archive made of the texts it gives. */
export interface StepWork {
  readonly parts: readonly { readonly form: BlockForm; readonly name: string }[];
  /** Milliseconds. */
  readonly when: number;
  archive(texts: readonly string[]): ExportedFile;
}

/** The blocks of a seat for the modeller; null where every block lies on the shelf. */
export function stepWork(out: SeatSetOut, naming: SolidNaming): StepWork | null {
  const forms = blockForms(out);
  if (forms.length === 0) return null;
  const names = forms.map((form) => named(out, form, { ...naming, format: 'step' }));
  return {
    parts: forms.map((form, k) => ({ form, name: names[k]!.title })),
    when: naming.when.getTime(),
    archive(texts) {
      const bytes = texts.map((text) => new TextEncoder().encode(text));
      return archive(out, Object.fromEntries(bytes.map((each, k) => [names[k]!.file, each])), naming);
    },
  };
}
