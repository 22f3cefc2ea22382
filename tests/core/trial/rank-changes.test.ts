import { describe, expect, it } from 'vitest';
import { bodyOfAthlete } from '../../../core/body/body-of-athlete.ts';
import { athleteSchema } from '../../../core/document/athlete-schema.ts';
import { FIT_FORMAT, type Fit, fitSchema } from '../../../core/document/fit-schema.ts';
import { withCoordinate } from '../../../core/document/fitting-coordinate.ts';
import type { UsualClass } from '../../../core/document/usual-classes.ts';
import { createEvaluator } from '../../../core/evaluation/evaluator.ts';
import type { Report } from '../../../core/evaluation/report.ts';
import { worsening } from '../../../core/evaluation/side-effects.ts';
import { usualHull } from '../../../core/hull/usual-hull.ts';
import { firstSetting } from '../../../core/optimise/first-setting.ts';
import { HELPS } from '../../../core/trial/helps.ts';
import { leverWeight } from '../../../core/trial/levers.ts';
import { BODY_PLACES, type Trial, trialSchema } from '../../../core/trial/observation.ts';
import { type RankedChange, rankChanges } from '../../../core/trial/rank-changes.ts';
import { cases } from '../../cases.ts';
import { notEmpty } from '../../not-empty.ts';
import { exampleFit, exampleSeat } from '../example/example-fit.ts';

const evaluator = createEvaluator();
const trial = (observations: Trial['observations'], seat = 0): Trial =>
  trialSchema.parse({ seat, heldOn: '2026-05-02', observations });

const bow: Trial['observations'][number] = { kind: 'boat', sign: 'bowDigs', strength: 2 };
const frontKnee: Trial['observations'][number] = {
  kind: 'body',
  place: 'frontKnee',
  feeling: 'ache',
  strength: 2,
};
/** An invented junior in a usual boat, in the first setting. */
function usualFit(boatClass: UsualClass): Fit {
  const athlete = athleteSchema.parse({ name: 'A', sex: 'female', side: 'left', statureM: 1.58, massKg: 49 });
  const boat = usualHull({ boatClass });
  const setting = firstSetting({
    body: bodyOfAthlete(athlete),
    boat,
    stationX: boat.seats[0]!.stationM,
    side: 'left',
  });
  return fitSchema.parse({ format: FIT_FORMAT, name: 'x', boat, seats: [{ ...setting, athlete }] });
}

const valueIn = (report: Report, id: string) => report.quantities.find((q) => q.id === id)!.value;

const usual = new Map<UsualClass, Fit>();
/** The same fit, made once. */
function usualOf(boatClass: UsualClass): Fit {
  const fit = usual.get(boatClass) ?? usualFit(boatClass);
  usual.set(boatClass, fit);
  return fit;
}

describe('rankChanges', () => {
  const fit = exampleFit();
  const before = evaluator.evaluate(fit);
  const forBow = rankChanges(evaluator, { fit, trial: trial([bow]) });

  it('does not say twice what the change moves', () => {
    const padAft = notEmpty(forBow.changes.filter(({ coordinate }) => coordinate === 'kneePad.aftM'));
    for (const { sideEffects } of padAft) {
      expect(sideEffects.filter((e) => e.id === 'padAft' && e.severityFrom === e.severityTo)).toEqual([]);
      expect(sideEffects.length).toBeGreaterThan(0);
    }
  });

  it('answers a digging bow with a change that does raise the bow', () => {
    const [best] = forBow.changes;
    const moved = withCoordinate(fit, { seat: 0, coordinate: best!.coordinate }, best!.to);
    const after = evaluator.evaluate(moved);
    expect(valueIn(after, 'trimCatch')).toBeGreaterThan(valueIn(before, 'trimCatch'));
    expect(best!.answers[0]!.answered).toBeGreaterThan(0);
    expect(best!.answers[0]!.moved[0]).toMatchObject({
      quantity: 'trimCatch',
      unit: 'm',
      from: valueIn(before, 'trimCatch'),
      to: expect.closeTo(valueIn(after, 'trimCatch'), 6),
    });
  });

  it('prefers a change that answers both of two observations', () => {
    const both = rankChanges(evaluator, { fit, trial: trial([bow, frontKnee]) }).changes;
    expect(both[0]!.gains.every((gain) => gain > 0)).toBe(true);
  });

  it('answers a tippy boat by bringing the weight lower', () => {
    const tippy = trial([{ kind: 'boat', sign: 'tippy', strength: 3 }]);
    const [best] = rankChanges(evaluator, { fit, trial: tippy }).changes;
    expect(best!.coordinate).toBe('kneePad.heightM');
    expect(best!.to).toBeLessThan(best!.from);
  });

  it('brings the weight over the centreline when the boat pulls, whichever side it pulls to', () => {
    // Free to lean, a paddler in a single is level by leaning: only one who was measured leaning pulls the boat.
    const leaning = exampleFit([exampleSeat({ pins: { trunkRollDeg: -10, thighRollDeg: -8 } })]);
    const report = evaluator.evaluate(leaning);
    for (const sign of ['pullsLeft', 'pullsRight'] as const) {
      const { changes } = rankChanges(evaluator, {
        fit: leaning,
        trial: trial([{ kind: 'boat', sign, strength: 2 }]),
      });
      const answering = changes.filter(({ basis }) => basis === 'model');
      for (const { coordinate, to } of notEmpty(answering)) {
        const moved = withCoordinate(leaning, { seat: 0, coordinate }, to);
        const after = valueIn(evaluator.evaluateHolding(moved, report), 'offCentre');
        expect(Math.abs(after), coordinate).toBeLessThan(Math.abs(valueIn(report, 'offCentre')));
      }
    }
  });

  it('says how far what was changed since the trial answers it, and asks for less after that', () => {
    const first = forBow;
    expect(first.soFar[0]!.answered).toBe(0);
    const { coordinate, to, answers } = first.changes[0]!;
    const now = withCoordinate(fit, { seat: 0, coordinate }, to);
    const then = rankChanges(evaluator, { fit: now, tried: fit, trial: trial([bow]) });
    expect(then.soFar[0]!.answered).toBeCloseTo(answers[0]!.answered, 6);
    // An answer beyond one and a half is no better: what is left to gain shrinks by what was done.
    for (const { gains } of notEmpty(then.changes)) {
      expect(gains[0]! + then.soFar[0]!.answered).toBeLessThanOrEqual(1.5 + 1e-9);
    }
  });

  it('respects the holes of the hardware', () => {
    const pitch = 0.02;
    const drilled = {
      ...fit,
      boat: { ...fit.boat, hardware: { ...fit.boat.hardware, padHolePitchM: pitch, restHolePitchM: pitch } },
    };
    const moved = rankChanges(evaluator, { fit: drilled, trial: trial([bow, frontKnee]) }).changes.filter(
      ({ coordinate }) => coordinate === 'kneePad.aftM' || coordinate === 'rearRest.aftM',
    );
    expect(moved.length).toBeGreaterThan(0);
    for (const { to } of moved) expect(Math.abs(to / pitch - Math.round(to / pitch))).toBeLessThan(1e-9);
  });

  it('tells what a change moves besides, but not what was asked to be moved', () => {
    const { changes } = forBow;
    for (const { sideEffects } of changes) {
      for (const { id, severityFrom, severityTo } of sideEffects) {
        if (severityFrom === severityTo) expect(['trimCatch', 'trimRest']).not.toContain(id);
      }
    }
    expect(changes.some(({ sideEffects }) => sideEffects.length > 0)).toBe(true);
  });

  it('speaks of the seat that was tried, not of its neighbour', () => {
    const crew = exampleFit([exampleSeat(), exampleSeat({ side: 'right' })]);
    const { changes } = rankChanges(evaluator, { fit: crew, trial: trial([frontKnee], 1) });
    const [best] = changes;
    const after = evaluator.evaluate(
      withCoordinate(crew, { seat: 1, coordinate: best!.coordinate }, best!.to),
    );
    const angle = (r: Report, seat: number) => r.seats[seat]!.stances.ready.angles.frontKnee;
    const before = evaluator.evaluate(crew);
    expect(angle(after, 1)).toBeGreaterThan(angle(before, 1));
    expect(angle(after, 0)).toBeCloseTo(angle(before, 0), 9);
  });

  it('tells of what practice alone moves which observation it is for', () => {
    const told = trial([
      { kind: 'boat', sign: 'frontFootSlips', strength: 2 },
      { kind: 'body', place: 'rearToes', feeling: 'numb', strength: 3 },
    ]);
    const { changes } = rankChanges(evaluator, { fit: usualOf('training'), trial: told });
    for (const { basis, practiceFor } of notEmpty(changes)) {
      expect(practiceFor.length > 0).toBe(basis === 'practice');
    }
    expect(changes.find(({ coordinate }) => coordinate === 'rearRest.aftM')!.practiceFor).toEqual([1]);
  });

  it('tells what was asked to move beside a change only where it turns for the worse', () => {
    const fit = exampleFit([exampleSeat({ kneePad: { ...exampleSeat().kneePad, outM: 0.015 } })]);
    const knee = trial([{ kind: 'body', place: 'kneelingKnee', feeling: 'pain', strength: 2 }]);
    const { changes } = rankChanges(evaluator, { fit, trial: knee });
    const shares = notEmpty(changes).flatMap(({ sideEffects }) =>
      sideEffects.filter(({ id }) => id === 'kneeShare'),
    );
    for (const effect of shares) expect(worsening(effect)).toBeGreaterThan(0);
    expect(changes.some(({ answers }) => answers[0]!.moved.some(({ from, to }) => from !== to))).toBe(true);
  });

  it('answers numb rear toes at the rear rest, not by turning the front foot out', () => {
    const toes = trial([{ kind: 'body', place: 'rearToes', feeling: 'numb', strength: 2 }]);
    const { changes } = rankChanges(evaluator, { fit: usualOf('training'), trial: toes });
    expect(changes[0]).toMatchObject({ coordinate: 'rearRest.aftM', basis: 'practice', practiceFor: [0] });
    expect(changes[0]!.to).toBeGreaterThan(changes[0]!.from);
    const turned = changes.find(({ coordinate }) => coordinate === 'frontFoot.toeOutDeg');
    expect(turned?.relevance ?? 0).toBe(0);
  });

  it.each((['training', 'C1'] as const).slice(0, cases(1, 2)))(
    'answers a bow that digs in by the pad aft, in a usual %s',
    (boatClass) => {
      const { changes } = rankChanges(evaluator, { fit: usualOf(boatClass), trial: trial([bow]) });
      expect(changes[0]).toMatchObject({ coordinate: 'kneePad.aftM', basis: 'model' });
      expect(changes[0]!.to).toBeGreaterThan(changes[0]!.from);
    },
  );

  it('puts every lever before what only moves the numbers', () => {
    for (const place of BODY_PLACES.slice(0, cases(1, BODY_PLACES.length))) {
      const observed = trial([{ kind: 'body', place, feeling: 'ache', strength: 2 }]);
      const { changes } = rankChanges(evaluator, { fit, trial: observed });
      const known = changes.map(({ relevance }) => relevance);
      expect(known, place).toEqual([...known].sort((a, b) => b - a));
    }
  });

  it('offers only what is worth saying: it pays, or a lever helps and its cost is no more than 2', () => {
    const worth = ({ score, gains, relevance, basis }: RankedChange) => {
      const most = Math.max(...gains);
      const pays = score > 0 && most >= 0.15;
      return basis === 'practice' || pays || (relevance > 0 && most >= 0.1 && score > -2);
    };
    for (const place of BODY_PLACES.slice(2, cases(4, BODY_PLACES.length))) {
      const observed = trial([{ kind: 'body', place, feeling: 'ache', strength: 3 }]);
      const { changes } = rankChanges(evaluator, { fit, trial: observed });
      for (const change of changes) expect(worth(change), `${place} ${change.coordinate}`).toBe(true);
    }
  });

  it('has nothing to say to nothing, to an empty seat, or where all is locked', () => {
    const tippy = trial([{ kind: 'boat', sign: 'tippy', strength: 3 }]);
    expect(rankChanges(evaluator, { fit, trial: trial([]) })).toEqual({ soFar: [], changes: [] });
    const empty = exampleFit([exampleSeat({ athlete: null })]);
    expect(rankChanges(evaluator, { fit: empty, trial: tippy }).changes).toEqual([]);
    const locked = exampleFit([exampleSeat({ locks: ['kneePad', 'rearRest', 'frontFoot', 'paddle'] })]);
    expect(rankChanges(evaluator, { fit: locked, trial: tippy }).changes).toEqual([]);
  });
});

it('enough is enough, and what worsens something counts half: our own weighing', () => {
  const fit = exampleFit();
  const ache = (place: 'rearToes' | 'kneelingKnee') =>
    ({ kind: 'body', place, feeling: 'ache', strength: 2 }) as const;
  const enough = (answered: number) => Math.min(answered, 1.5);
  const seen = { enough: false, worse: false };
  for (const observations of [[bow, ache('rearToes')], [ache('kneelingKnee')]]) {
    const { soFar, changes } = rankChanges(evaluator, { fit, trial: trial(observations) });
    for (const { answers, gains, coordinate, from, to, worsens, basis, relevance } of notEmpty(changes)) {
      gains.forEach((gain, i) => {
        const { answered } = answers[i]!;
        expect(gain).toBeCloseTo(enough(answered) - enough(soFar[i]!.answered), 12);
        seen.enough ||= answered > 1.6;
      });
      if (basis === 'practice') continue;
      const whole = observations.reduce((sum, observation, i) => {
        const weight = leverWeight(observation, { coordinate, by: to - from });
        return sum + (gains[i]! >= HELPS ? weight * observation.strength : 0);
      }, 0);
      expect(relevance).toBe(worsens ? whole / 2 : whole);
      seen.worse ||= worsens && whole > 0;
    }
  }
  expect(seen).toEqual({ enough: true, worse: true });
});
