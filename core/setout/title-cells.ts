import { seatOf } from './floorboard-template.ts';
import type { PaperName } from './paper.ts';
import type { SeatSetOut } from './set-out.ts';
import { revisionText, type SheetStamp, stampDay } from './sheet-stamp.ts';

/** A cell of the title block: its share of the width, what it is, and two lines. */
export interface TitleCell {
  /** Width as a share of the title's. */
  readonly share: number;
  /** Small, above. */
  readonly label: string;
  /** What is read first. */
  readonly strong: string;
  /** What stands under it. */
  readonly more: string;
}

/**
 * What stands in a set-out sheet's title block: who for, which boat, which revision, which scale, units and paper. `scale`
 * is the drawing's as text, null on a sheet without one; `count` is `1 of 3`.
 */
export function titleCells(
  out: SeatSetOut,
  {
    stamp,
    paper,
    scale,
    count,
  }: { stamp: SheetStamp; paper: PaperName; scale: string | null; count: string },
): TitleCell[] {
  const { options, words } = out.work;
  const { seats, seat } = seatOf(out);
  const kneels = seats === 1 ? 'work-title.kneels' : 'work-title.kneels.seat';
  return [
    {
      share: 34,
      label: words.say('work-title.for'),
      strong: stamp.athleteName,
      more: words.say(kneels, { side: out.kneels, seat, seats }),
    },
    { share: 34, label: words.say('fitting.boat'), strong: stamp.boatName, more: stamp.fitName },
    {
      share: 28,
      label: words.say('term.revision'),
      strong: revisionText(stamp, words),
      more: words.say('work-title.saved', { day: stampDay(stamp) }),
    },
    {
      share: 26,
      label: words.say('work-title.scale'),
      strong: scale
        ? words.say('work-title.drawing', { scale, paper })
        : words.say('work-title.tables', { paper }),
      more: words.say('work-title.units', { unit: options.units }),
    },
    { share: 14, label: words.say('work-title.sheet'), strong: count, more: 'Kneelwright' },
  ];
}
