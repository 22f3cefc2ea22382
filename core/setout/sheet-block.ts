/** A column of a table: its share of the width, and how its words stand. */
export interface SheetColumn {
  /** What stands over it. */
  readonly title: string;
  /** Width as a share of all columns' sum. */
  readonly share: number;
  /** Figures end at the right, words begin at the left. */
  readonly anchor: 'start' | 'end';
  /** Whether it is what is worked to. */
  readonly strong: boolean;
}

/** A short entry of a grid: what, its figure, and whether the present setting uses it. */
export interface GridEntry {
  /** What it is called. */
  readonly label: string;
  /** What it measures, with its unit where the heading has none. */
  readonly value: string;
  /** Whether the present setting uses it. */
  readonly now: boolean;
}

/** A headed part of a set-out sheet, in words: page and screen lay out the same. */
export type SheetBlock =
  | {
      readonly kind: 'list';
      readonly heading: string;
      readonly sentences: readonly string[];
      readonly numbered: boolean;
      /** True where it must be read before anything is cut. */
      readonly strong: boolean;
    }
  | {
      readonly kind: 'table';
      readonly heading: string;
      readonly columns: readonly SheetColumn[];
      readonly cells: readonly (readonly string[])[];
    }
  | {
      readonly kind: 'grid';
      readonly heading: string;
      /** How the entries are read; null where they speak for themselves. */
      readonly sentence: string | null;
      readonly perRow: number;
      readonly entries: readonly GridEntry[];
    };

/** A list of sentences: plain and not numbered unless said otherwise. */
export function listBlock(
  heading: string,
  sentences: readonly string[],
  how: { numbered?: boolean; strong?: boolean } = {},
): SheetBlock {
  return { kind: 'list', heading, sentences, numbered: false, strong: false, ...how };
}

/** A column that stands at its left edge in plain type unless said otherwise. */
export function column(
  title: string,
  share: number,
  how: Partial<Pick<SheetColumn, 'anchor' | 'strong'>> = {},
): SheetColumn {
  return { title, share, anchor: 'start', strong: false, ...how };
}
