import { type PageSize, type PaperName, pageOf } from './paper.ts';

/** White around a sheet's frame, millimetres. */
export const SHEET_MARGIN_MM = 8;

/** Height of the title block along a sheet's foot, millimetres. */
export const TITLE_BLOCK_MM = 17;

/** White between a table's columns, millimetres. */
export const COLUMN_GAP_MM = 8;

/** White inside a sheet's frame, millimetres. */
const INSIDE_MM = 4;

/** About how wide a column is, millimetres: a line that reads easily. */
const COLUMN_MM = 125;

/** A rectangle on a page, millimetres from its top left corner. */
export interface SheetBox {
  /** Millimetres from the page's top left corner. */
  readonly left: number;
  /** From the upper edge of the page. */
  readonly top: number;
  /** To the right. */
  readonly width: number;
  /** Down. */
  readonly height: number;
}

/** The room inside a sheet's frame, above its title block. An A4 landscape sheet has 273 × 169 mm. */
export function sheetRoom({ width, height }: PageSize): SheetBox {
  const edge = SHEET_MARGIN_MM + INSIDE_MM;
  return {
    left: edge,
    top: edge,
    width: width - 2 * edge,
    height: height - 2 * edge - TITLE_BLOCK_MM,
  };
}

/** As many columns of about `COLUMN_MM` as a box has room for, at least one. */
export function sheetColumns(box: SheetBox): SheetBox[] {
  const count = Math.max(1, Math.round((box.width + COLUMN_GAP_MM) / (COLUMN_MM + COLUMN_GAP_MM)));
  const width = (box.width - (count - 1) * COLUMN_GAP_MM) / count;
  return Array.from({ length: count }, (_, k) => ({
    ...box,
    left: box.left + k * (width + COLUMN_GAP_MM),
    width,
  }));
}

/** The first sheet on a paper: its page (landscape), its room, the drawing's box, and the column beside it if there is one. */
export interface FirstSheet {
  /** The paper. */
  readonly page: PageSize;
  /** All that lies inside margins and title. */
  readonly room: SheetBox;
  /** Where the views go. */
  readonly drawing: SheetBox;
  /** Room for tables beside the views; null on paper that has none. */
  readonly beside: SheetBox | null;
}

/** A4 and Letter give the first sheet's whole width to the drawing; on A3 a column of tables stands beside it. */
export function firstSheet(paper: PaperName): FirstSheet {
  const page = pageOf(paper, { landscape: true });
  const room = sheetRoom(page);
  if (paper !== 'A3') return { page, room, drawing: room, beside: null };
  const { width } = sheetColumns(room)[0]!;
  return {
    page,
    room,
    drawing: { ...room, width: room.width - width - COLUMN_GAP_MM },
    beside: { ...room, left: room.left + room.width - width, width },
  };
}
