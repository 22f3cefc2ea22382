import { keysOf } from '../units/entries.ts';
/** Papers that sheets and templates are printed on: short and long side, millimetres (ISO 216; ANSI/ASME Y14.1). */
export const PAPERS = {
  A4: { short: 210, long: 297 },
  A3: { short: 297, long: 420 },
  Letter: { short: 215.9, long: 279.4 },
} as const;
/** A paper by the name that it is sold under. */
export type PaperName = keyof typeof PAPERS;

/** Names of the papers, for choosing. */
export const PAPER_NAMES = keysOf(PAPERS);

/** A page landscape or portrait, millimetres. */
export interface PageSize {
  /** The size by name. */
  readonly paper: PaperName;
  readonly landscape: boolean;
  /** Width and height as the page is held, millimetres. */
  readonly width: number;
  /** Of the page as it is held. */
  readonly height: number;
}

/** A page of a paper: portrait or landscape. */
export function pageOf(paper: PaperName, { landscape }: { landscape: boolean }): PageSize {
  const { short, long } = PAPERS[paper];
  return { paper, landscape, width: landscape ? long : short, height: landscape ? short : long };
}
