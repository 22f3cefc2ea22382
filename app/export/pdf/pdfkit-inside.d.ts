import type { Glyphs } from './font-shelf.ts';

/** What pdfkit has and its types leave out. */
declare global {
  namespace PDFKit {
    interface PDFDocument {
      /** The current font as fontkit reads it. */
      readonly _font: { readonly font: Glyphs };
      /** The catalogue. */
      readonly _root: { readonly data: Record<string, unknown> };
      /** Reads a picture before it is placed. */
      openImage(bytes: Buffer): OpenedImage;
      image(opened: OpenedImage, x: number, y: number, options: { width: number; height: number }): this;
      /** Lengths of dashes and gaps in turn. */
      dash(lengths: readonly number[], options: object): this;
    }
    interface OpenedImage {
      readonly width: number;
      readonly height: number;
    }
    namespace Mixins {
      interface StructureElementOptions {
        /** What a table's head heads (ISO 32000-1, table 349). */
        scope?: 'Column' | 'Row';
      }
    }
  }
}
