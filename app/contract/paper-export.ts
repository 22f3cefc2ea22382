import { z } from 'zod';
import { fitSchema } from '../../core/document/fit-schema.ts';
import { boardPlanSchema } from '../../core/setout/board-plan.ts';
import { PAPER_NAMES } from '../../core/setout/paper.ts';
import { paperOptionsSchema } from '../../core/setout/set-out-options.ts';
import { TEMPLATE_IDS } from '../../core/setout/template-ids.ts';
import { SHOW_VIEWS } from '../../core/show/show-picture.ts';
import { SHEET_UNITS } from '../../core/text/sheet-length.ts';
import { LANGUAGE_TAGS } from './display.ts';
import { id, instant } from './records.ts';
import { delivery } from './safekeeping.ts';

const paper = z.enum(PAPER_NAMES);
const seat = z.int().min(0).max(3);

/** The revision that a sheet is made from: its number (null for a draft), its name and mark, and when it was kept. */
export const exportedRevision = z.strictObject({
  number: z.int().min(1).max(1_000_000).nullable(),
  name: z.string().max(200).default(''),
  /** Its mark, the same on every computer; empty for a draft. */
  mark: z.string().max(12).default(''),
  keptAt: instant,
});

/** What the first three bytes of every JPEG are in Base64 (FF D8 FF). */
const JPEG_BASE64 = '/9j/';

/** The kinds of paper and of workshop file that can be exported. */
export const wantedExport = z.discriminatedUnion('kind', [
  z.strictObject({
    kind: z.literal('set-out-sheet'),
    seat,
    paper,
    options: paperOptionsSchema.prefault({}),
  }),
  z.strictObject({
    kind: z.literal('templates'),
    seat,
    format: z.enum(['pdf', 'svg', 'dxf']),
    /** Those that the seat does not need are left out. */
    templates: z.array(z.enum(TEMPLATE_IDS)).min(1).max(TEMPLATE_IDS.length),
    /** For PDF only. */
    paper,
    options: paperOptionsSchema.prefault({}),
  }),
  z.strictObject({
    /** Blocks as closed solids in millimetres, one file a part. */
    kind: z.literal('solids'),
    seat,
    format: z.enum(['3mf', 'stl', 'step']),
    options: paperOptionsSchema.prefault({}),
  }),
  z.strictObject({
    /** One board for several fits: the floorboard at full size with every hole, or the card for the boathouse. */
    kind: z.literal('board-plan'),
    seat,
    what: z.enum(['floorboard', 'card']),
    /** The floorboard in any of them, the card as PDF. */
    format: z.enum(['pdf', 'svg', 'dxf']),
    paper,
    plan: boardPlanSchema,
  }),
  z.strictObject({
    /** One stroke of the athlete as an SVG that moves by itself. */
    kind: z.literal('moving-picture'),
    seat,
    view: z.enum(SHOW_VIEWS),
  }),
  z.strictObject({
    kind: z.literal('take-home'),
    seat,
    paper,
    units: z.enum(SHEET_UNITS).default('mm'),
    /** An earlier state of the same fit, to show before and after; null shows the present alone. */
    before: fitSchema.nullable(),
    /** Why it was changed, in the coach's words. */
    reason: z.string().max(2000).default(''),
    /** What was said after the last trial and what was done about it, in words; `open` while some of it is unanswered. */
    said: z
      .strictObject({ lines: z.array(z.string().max(2200)).max(30), open: z.boolean() })
      .default({ lines: [], open: false }),
    /** Body mass stays off the page unless the coach turns it on. */
    mass: z.enum(['hidden', 'kg', 'lb']).default('hidden'),
    /** Photographs that the coach chose to show: JPEGs as Base64, faces blurred by the page that sends them. */
    photographs: z
      .array(
        z.strictObject({
          data: z
            .base64()
            .max(2 * 1024 * 1024)
            .startsWith(JPEG_BASE64),
          caption: z.string().max(200),
        }),
      )
      .max(2)
      .default([]),
  }),
]);

/** A boat's sections at full size: a drawing, or pages to print. */
export const sectionsToExport = z.strictObject({
  id,
  format: z.enum(['pdf', 'svg', 'dxf']),
  /** For PDF only. */
  paper,
  units: z.enum(SHEET_UNITS).default('mm'),
  language: z.enum(LANGUAGE_TAGS).default('en'),
});

export const exportInput = z.strictObject({
  /** The language of the paper; it may be another than the page's. */
  language: z.enum(LANGUAGE_TAGS).default('en'),
  fit: fitSchema,
  revision: exportedRevision,
  wanted: wantedExport,
});

export const exportOutput = z.strictObject({
  delivery,
  /** Names of scripts that no font of the program has; their letters stand as boxes on the paper. */
  unprintable: z.array(z.string()),
});

export type ExportInput = z.output<typeof exportInput>;
