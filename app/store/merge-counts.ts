/** What became of the items of one kind. */
export interface MergeCount {
  /** Not known here before. */
  added: number;
  /** Known here, and newer in what came in. */
  updated: number;
  /** Known here in the same state. */
  same: number;
  /** Known here in a newer state, which was kept. */
  keptNewer: number;
}

export interface MergeCounts {
  readonly athletes: MergeCount;
  readonly boats: MergeCount;
  /** The club's paddles. */
  readonly paddles: MergeCount;
  readonly fits: MergeCount;
  readonly revisions: MergeCount;
  readonly trials: MergeCount;
  /** Photographs of boats. */
  readonly photos: MergeCount;
  /** Drafts that came in beside other work here, and were kept as revisions of their own. */
  draftsKeptAsRevisions: number;
}

/** Nothing has come in. */
export function emptyCounts(): MergeCounts {
  const none = (): MergeCount => ({ added: 0, updated: 0, same: 0, keptNewer: 0 });
  return {
    athletes: none(),
    boats: none(),
    paddles: none(),
    fits: none(),
    revisions: none(),
    trials: none(),
    photos: none(),
    draftsKeptAsRevisions: 0,
  };
}
