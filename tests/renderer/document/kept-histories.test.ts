import { describe, expect, it } from 'vitest';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import { createEditHistory } from '../../../renderer/document/edit-history.ts';
import { historyFor, keepHistory } from '../../../renderer/document/kept-histories.ts';
import { exampleFit } from '../../core/example/example-fit.ts';

const fit = exampleFit();
const moved = withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, 0.2);

/** A fit that was left with one step done. */
function left(fitId: string): void {
  const history = createEditHistory();
  history.record('move knee pad', fit);
  keepHistory(fitId, history, moved);
}

describe('steps of undo after leaving and coming back', () => {
  it('are offered again, whatever order the disk gave the keys back in', () => {
    left('a');
    const seats = moved.seats.map((seat) => Object.fromEntries(Object.entries(seat).reverse()));
    const reread = { ...JSON.parse(JSON.stringify({ ...moved, seats })) };
    const history = historyFor('a', reread);
    expect(history.undoName).toBe('move knee pad');
    expect(history.undo(reread)?.fit).toBe(fit);
  });

  it('are not where something else has changed the fit meanwhile, nor in another fit', () => {
    left('b');
    const elsewhere = withCoordinate(moved, { seat: 0, coordinate: 'kneePad.outM' }, 0.05);
    expect(historyFor('b', elsewhere).undoName).toBeNull();
    expect(historyFor('never left', moved).undoName).toBeNull();
  });

  it('are kept for the twenty fits left last', () => {
    for (let k = 0; k < 21; k++) left(`many ${k}`);
    expect(historyFor('many 0', moved).undoName).toBeNull();
    expect(historyFor('many 20', moved).undoName).toBe('move knee pad');
  });
});
