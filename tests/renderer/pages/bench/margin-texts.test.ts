import { describe, expect, it } from 'vitest';
import { formatFor } from '../../../../app/language/format.ts';
import { FITTING_COORDINATES } from '../../../../core/document/coordinates.ts';
import { withCoordinate } from '../../../../core/document/fitting-coordinate.ts';
import { createEvaluator } from '../../../../core/evaluation/evaluator.ts';
import { changeText, withChange } from '../../../../renderer/bench/change-text.ts';
import { differencesOf, otherChanges } from '../../../../renderer/bench/tabs/revisions/differences.ts';
import { savedText } from '../../../../renderer/pages/bench/saved-state.tsx';
import { exampleFit } from '../../../core/example/example-fit.ts';
import { notEmpty } from '../../../not-empty.ts';

const format = formatFor({ length: 'cm', mass: 'kg', decimal: 'point' });
const plain = (text: string) => text.replaceAll('\u{202f}', ' ');
const fit = exampleFit();
const evaluator = createEvaluator();
const report = evaluator.evaluate(fit);

describe('a proposed change in words', () => {
  const move = (coordinate: (typeof FITTING_COORDINATES)[number], from: number, to: number) =>
    plain(changeText({ kind: 'move', seat: 0, coordinate, from, to, clean: true, sideEffects: [] }, format));

  it('names the direction that a boatbuilder would', () => {
    expect(move('kneePad.aftM', 0.175, 0.16)).toBe('Knee pad 1.5 cm forward, to 16.0 cm');
    expect(move('frontFoot.forwardM', 0.4, 0.43)).toBe('Front foot 3.0 cm forward, to 43.0 cm');
    expect(move('rearRest.outM', -0.1, -0.076)).toBe(
      'Rear rest 2.4 cm to the kneeling side: 7.6 cm to the off side',
    );
    expect(move('rearRest.turnDeg', 10, 15)).toBe('Rear rest turned 5° more, to 15°');
  });

  it('has words for both directions of every coordinate', () => {
    for (const coordinate of FITTING_COORDINATES) {
      expect(move(coordinate, 0.1, 0.2)).not.toBe(move(coordinate, 0.2, 0.1));
    }
  });

  it('is made as it is said', () => {
    const change = { kind: 'choose', seat: 0, choice: 'strapReleases' } as const;
    const fixed = {
      ...fit,
      seats: [{ ...fit.seats[0]!, rearRest: { ...fit.seats[0]!.rearRest, strap: 'none' as const } }],
    };
    expect(withChange(fixed, change).seats[0]!.rearRest.strap).toBe('releases');
    expect(withChange(fixed, change).boat).toBe(fit.boat);
  });
});

describe('the table of differences', () => {
  const moved = withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, 0.215);
  const drawn = { fit: moved, report: evaluator.evaluate(moved) };

  it('is empty against itself', () => {
    expect(differencesOf({ fit, report }, { fit, report }, { seat: 0, format })).toEqual([]);
  });

  it('lists what was moved first, then what it did', () => {
    const [first, ...rest] = differencesOf({ fit, report }, drawn, { seat: 0, format });
    expect(plain(`${first!.what} ${first!.older} ${first!.now}`)).toBe(
      'Knee pad: Aft of the mark 17.5 cm 21.5 cm',
    );
    expect(rest.map(({ what }) => what)).toContain('Bow over stern at rest');
    for (const { older, now } of rest) expect(older).not.toBe(now);
  });

  it.each(['cm', 'in'] as const)(
    'adds up as it is read, in %s: what is now less what was is the change',
    (length) => {
      const shown = formatFor({ length, mass: 'kg', decimal: 'point' });
      const told = (text: string) => Number(/[-+]?[\d.]+/.exec(text.replace('\u{2212}', '-'))![0]);
      const rows = [0.19, 0.195, 0.2, 0.215].flatMap((aftM) => {
        const other = withCoordinate(fit, { seat: 0, coordinate: 'kneePad.aftM' }, aftM);
        const now = { fit: other, report: evaluator.evaluate(other) };
        return differencesOf({ fit, report }, now, { seat: 0, format: shown });
      });
      for (const { what, older, now, change } of notEmpty(rows))
        expect(told(now) - told(older), `${what}: ${older}, ${now}, ${change}`).toBeCloseTo(told(change), 6);
    },
  );

  it('says in words that the boat or somebody changed', () => {
    expect(otherChanges(fit, fit)).toEqual([]);
    const other = {
      ...fit,
      boat: { ...fit.boat, name: 'Another' },
      seats: [{ ...fit.seats[0]!, athlete: null }],
    };
    expect(otherChanges(fit, other)).toHaveLength(2);
  });
});

describe('kept', () => {
  const savedAt = '2031-05-01T10:00:00.000Z';
  const kept = (seconds: number) =>
    plain(savedText({ keeping: 'kept', savedAt, retrying: false }, Date.parse(savedAt) + seconds * 1000));

  it.each([
    [0.4, 'saved just now'],
    [2, 'saved 2 sec ago'],
    [59.9, 'saved 59 sec ago'],
    [61, 'saved 1 min ago'],
  ])('%s s ago', (seconds, text) => {
    expect(kept(seconds)).toBe(text);
  });

  it('says what is going on', () => {
    expect(savedText({ keeping: 'keeping', savedAt, retrying: false }, 0)).toBe('saving …');
    expect(savedText({ keeping: 'failed', savedAt, retrying: true }, 0)).toBe('not saved yet; retrying');
    expect(savedText({ keeping: 'failed', savedAt, retrying: false }, 0)).toBe('not saved');
  });
});
