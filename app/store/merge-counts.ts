/** What became of the items of one kind. */
export interface MergeCount {
  /** Not known here before. */
  added: number;
  /** Known here; something of it was changed elsewhere, and was taken over. */
  updated: number;
  /** Known here in the same state. */
  same: number;
  /** Known here in a newer state, which was kept. */
  keptNewer: number;
  /** Fields that were changed both here and elsewhere: both values are kept, and a person decides. */
  conflicts: number;
}

/** What became of one item. */
export type MergeOutcome = Exclude<keyof MergeCount, 'conflicts'>;

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
  /** People who were erased here, and stay erased. */
  refusedErased: number;
  /** People who were erased elsewhere, and now are here. */
  erasedHere: number;
}

/** Nothing has come in. */
export function emptyCounts(): MergeCounts {
  const none = (): MergeCount => ({ added: 0, updated: 0, same: 0, keptNewer: 0, conflicts: 0 });
  return {
    athletes: none(),
    boats: none(),
    paddles: none(),
    fits: none(),
    revisions: none(),
    trials: none(),
    photos: none(),
    refusedErased: 0,
    erasedHere: 0,
  };
}

/** What came in by one way and then by another: what the second only met again counts once. */
export function bothCounts(first: MergeCounts, second: MergeCounts): MergeCounts {
  const both = (kind: MergedKind): MergeCount => ({
    added: first[kind].added + second[kind].added,
    updated: first[kind].updated + second[kind].updated,
    same: first[kind].same + Math.max(0, second[kind].same - first[kind].added),
    keptNewer: first[kind].keptNewer + second[kind].keptNewer,
    conflicts: first[kind].conflicts + second[kind].conflicts,
  });
  return {
    athletes: both('athletes'),
    boats: both('boats'),
    paddles: both('paddles'),
    fits: both('fits'),
    revisions: both('revisions'),
    trials: both('trials'),
    photos: both('photos'),
    refusedErased: Math.max(first.refusedErased, second.refusedErased),
    erasedHere: Math.max(first.erasedHere, second.erasedHere),
  };
}

type MergedKind = Exclude<keyof MergeCounts, 'refusedErased' | 'erasedHere'>;
