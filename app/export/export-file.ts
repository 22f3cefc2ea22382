import { zipSync } from 'fflate';
import { evaluateFit } from '../../core/evaluation/evaluator.ts';
import { hullOfBoat } from '../../core/hull/hull-of-boat.ts';
import { type SeatSetOut, setOutSeat } from '../../core/setout/set-out.ts';
import { revisionText, type SheetStamp } from '../../core/setout/sheet-stamp.ts';
import type { FullSizeDrawing } from '../../core/setout/template-drawing.ts';
import { pageCount } from '../../core/setout/template-pages.ts';
import { templatesOf } from '../../core/setout/templates.ts';
import type { ExportInput } from '../contract/paper-export.ts';
import type { MessageKey } from '../language/messages.ts';
import type { Translator } from '../language/translator.ts';
import { boardPlanWork } from './board-plan-file.ts';
import { fileName } from './file-name.ts';
import { movingPicture } from './moving-picture.ts';
import { scriptsOf } from './pdf/font-shelf.ts';
import { setOutPdf } from './set-out-pdf.ts';
import { type StepWork, solidFiles, stepWork } from './solid-files.ts';
import type { SolidGeometry } from './solids/solid-geometry.ts';
import { takeHomeOf } from './take-home-of-fit.ts';
import { takeHomePdf } from './take-home-pdf.ts';
import { templateDxf } from './template-dxf.ts';
import { type PrintedPdf, templatePdf } from './template-pdf.ts';
import { templateSvg } from './template-svg.ts';

/** A file ready to be handed over. */
export interface ExportedFile {
  readonly name: string;
  readonly mime: string;
  readonly bytes: Uint8Array;
  /** Scripts that no font has; their letters stand as boxes. */
  readonly unprintable: readonly string[];
}

/** Work that makes a file: how many steps it is about, and the steps. */
export interface ExportWork {
  readonly of: number;
  readonly steps: Generator<void, ExportedFile>;
}

const MIME = {
  pdf: 'application/pdf',
  svg: 'image/svg+xml',
  dxf: 'image/vnd.dxf',
  zip: 'application/zip',
} as const;

/**
 * The work that an export asks for; null when nobody kneels in the seat it names. Equal input makes equal bytes. Solids need the
 * solid-geometry library; STEP files are `stepExport`'s.
 */
export function exportWork(
  input: ExportInput,
  words: Translator,
  geometry: SolidGeometry | null = null,
): ExportWork | null {
  const { fit, wanted } = input;
  if (wanted.kind === 'board-plan') return boardPlanWork({ ...input, wanted }, words, filesOf(words));
  const stamp = stampOf(input);
  if (!stamp) return null;
  const name = nameWith(stamp, words);
  if (wanted.kind === 'take-home') {
    const page = takeHomeOf(fit, { ...wanted, index: wanted.seat, words });
    return (
      page && {
        of: 1,
        steps: asFile(takeHomePdf(page, { ...wanted, stamp }), name(words.say('show.page'), 'pdf')),
      }
    );
  }
  if (wanted.kind === 'moving-picture') {
    const picture = movingPicture(fit, { ...wanted, index: wanted.seat, words });
    return picture === null ? null : { of: 1, steps: asSvg(picture, name(words.say('stroke.title'), 'svg')) };
  }
  const out = setOut(input, words);
  if (!out) return null;
  if (wanted.kind === 'set-out-sheet') {
    const hull = hullOfBoat(fit.boat);
    return {
      of: 3,
      steps: asFile(setOutPdf(out, { ...wanted, hull, stamp }), name(words.say('setout.page'), 'pdf')),
    };
  }
  if (wanted.kind === 'solids') {
    const { format } = wanted;
    if (!geometry || format === 'step') return null;
    return solidFiles(out, { geometry, format, stamp, name, when: archiveTime(stamp) });
  }
  const drawings = templatesOf(out, wanted.templates);
  if (wanted.format === 'pdf') {
    const steps = asFile(
      templatePdf(drawings, { ...wanted, stamp, words, units: out.work.options.units }),
      name(words.say('paper.templates.file'), 'pdf'),
    );
    return { of: pageCount(drawings, wanted.paper), steps };
  }
  const { format } = wanted;
  return { of: drawings.length, steps: drawingFiles(drawings, { format, stamp, name, words }) };
}

/** How papers and drawings that several kinds of export make become files. */
export interface FilesOf {
  readonly pdf: (
    pages: Generator<void, PrintedPdf>,
    what: MessageKey,
    stamp: SheetStamp,
  ) => Generator<void, ExportedFile>;
  readonly drawings: (
    drawings: readonly FullSizeDrawing[],
    format: 'svg' | 'dxf',
    stamp: SheetStamp,
  ) => Generator<void, ExportedFile>;
}

function filesOf(words: Translator): FilesOf {
  const name = (what: string, ending: string, stamp: SheetStamp) => fileName([what, stamp.boatName], ending);
  return {
    pdf: (pages, what, stamp) => asFile(pages, name(words.say(what), 'pdf', stamp)),
    drawings: (drawings, format, stamp) =>
      drawingFiles(drawings, {
        format,
        stamp,
        words,
        name: (what, ending) => name(what, ending, stamp),
      }),
  };
}

/**
 * The work of a STEP export: what the modeller receives, and how its answer becomes a file. Null when the seat is empty or
 * nothing is to be made.
 */
export function stepExport(input: ExportInput, words: Translator): StepWork | null {
  const stamp = stampOf(input);
  const out = stamp && setOut(input, words);
  return out && stepWork(out, { stamp, name: nameWith(stamp, words), when: archiveTime(stamp) });
}

function nameWith(stamp: SheetStamp, words: Translator) {
  return (what: string, ending: string) =>
    fileName([what, stamp.athleteName, stamp.boatName, revisionWords(stamp, words)], ending);
}

function setOut({ fit, wanted }: ExportInput, words: Translator): SeatSetOut | null {
  if (!('options' in wanted)) return null;
  const { options } = wanted;
  return setOutSeat({ fit, report: evaluateFit(fit), index: wanted.seat, options, words });
}

function stampOf({ fit, revision, wanted }: ExportInput): SheetStamp | null {
  const athlete = fit.seats[wanted.seat]?.athlete;
  if (!athlete) return null;
  return {
    fitName: fit.name,
    boatName: fit.boat.name,
    athleteName: athlete.name,
    revision: revision.number,
    revisionName: revision.name,
    ...(revision.mark ? { mark: revision.mark } : {}),
    keptAt: revision.keptAt,
  };
}

function revisionWords(stamp: SheetStamp, words: Translator): string {
  return revisionText({ ...stamp, revisionName: '' }, words);
}

/** One picture needs no steps of its own. */
function* asSvg(text: string, name: string): Generator<void, ExportedFile> {
  yield;
  return { name, mime: MIME.svg, bytes: new TextEncoder().encode(text), unprintable: [] };
}

function* asFile(pages: Generator<void, PrintedPdf>, name: string): Generator<void, ExportedFile> {
  const { bytes, missing } = yield* pages;
  return { name, mime: MIME.pdf, bytes, unprintable: scriptsOf(missing) };
}

/** One drawing as its own file, several together in one archive. */
function* drawingFiles(
  drawings: readonly FullSizeDrawing[],
  given: {
    format: 'svg' | 'dxf';
    stamp: SheetStamp;
    words: Translator;
    name: (what: string, ending: string) => string;
  },
): Generator<void, ExportedFile> {
  const { format, stamp, name, words } = given;
  const files: { name: string; bytes: Uint8Array }[] = [];
  for (const drawing of drawings) {
    const text = format === 'svg' ? templateSvg(drawing, stamp, words) : templateDxf(drawing, stamp, words);
    files.push({
      name: name(drawing.title.replace(': ', ' '), format),
      bytes: new TextEncoder().encode(text),
    });
    yield;
  }
  const [only] = files;
  if (files.length === 1 && only) return { ...only, mime: MIME[format], unprintable: [] };
  const entries = Object.fromEntries(files.map((file) => [file.name, file.bytes]));
  const bytes = zipSync(entries, { mtime: archiveTime(stamp) });
  return {
    name: name(
      words.say('effect.written', { name: words.say('paper.templates.file'), change: format.toUpperCase() }),
      'zip',
    ),
    mime: MIME.zip,
    bytes,
    unprintable: [],
  };
}

/** Noon of the revision's day, right in every zone; archives know no years but 1980 to 2099. */
function archiveTime({ keptAt }: SheetStamp): Date {
  const [year = 1980, month = 1, day = 1] = keptAt.slice(0, 10).split('-').map(Number);
  return new Date(Math.min(2099, Math.max(1980, year)), month - 1, day, 12);
}
