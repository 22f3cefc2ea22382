import { describe, expect, it } from 'vitest';
import { FIRST_TAPES } from '../../../../core/body/measuring.ts';
import { TAPE_SD } from '../../../../core/body/tape-sd.ts';
import { athleteSchema } from '../../../../core/document/athlete-schema.ts';
import {
  athleteAfter,
  beginSession,
  countedBody,
  hasGrown,
  isEarlier,
  isFarApart,
  type MeasuringSession,
  oddName,
  STEPS,
  sessionResult,
  stepAfter,
  tapePerson,
  tapeTaken,
} from '../../../../renderer/pages/measure/session.ts';
import { exampleAthlete } from '../../../core/example/example-fit.ts';

const athlete = exampleAthlete({
  bornOn: '1999-01-01',
  measuredOn: '2026-01-10',
  tape: { footLength: { valueM: 0.27, takenOn: '2026-01-10' } },
});
const session = (more: Partial<MeasuringSession> = {}): MeasuringSession => ({
  ...beginSession('2026-06-01'),
  ...more,
});
const sitting = (...readings: (number | null)[]) => session({ readings: { sittingHeight: readings } });

describe('the steps of a session', () => {
  it('go from the body through the six that say most to the end; the others are there besides', () => {
    const walked = ['body' as (typeof STEPS)[number]];
    while (walked.at(-1) !== 'end') walked.push(stepAfter(walked.at(-1)!));
    expect(walked).toEqual(['body', ...FIRST_TAPES, 'end']);
    expect(STEPS).toHaveLength(14);
    expect(stepAfter('biacromialBreadth')).toBe('end');
  });
});

describe('a session that begins', () => {
  it('knows stature and mass of somebody put in the same day, and of nobody else', () => {
    const { measuredOn } = athlete;
    expect(beginSession(measuredOn!, athlete)).toMatchObject({ statureM: 1.8, massKg: 80 });
    expect(beginSession('2026-06-01', athlete)).toMatchObject({ statureM: null, massKg: null });
    expect(beginSession('2026-06-01')).toMatchObject({ statureM: null, massKg: null });
  });
});

describe('readings of one measure', () => {
  const taken = (now: MeasuringSession) => tapeTaken(now, 'sittingHeight', tapePerson(now, athlete));

  it('count together, gaps left out', () => {
    const { read, counted, odd } = taken(sitting(0.94, null, 0.944));
    expect(counted).toEqual([0.94, 0.944]);
    expect(read?.valueM).toBeCloseTo(0.942, 12);
    expect(odd).toEqual([]);
  });

  it('that no one in a hundred has do not count before somebody says so', () => {
    const slip = sitting(1.49, 0.94);
    expect(taken(slip)).toMatchObject({ counted: [0.94], odd: [{ value: 1.49 }] });
    const kept = { ...slip, keptAnyway: [oddName('sittingHeight', 1.49)] };
    expect(taken(kept)).toMatchObject({ counted: [1.49, 0.94], odd: [] });
    const another = { ...kept, readings: { sittingHeight: [1.48, 0.94] } };
    expect(taken(another).odd).toHaveLength(1);
  });

  it('that lie 5 cm apart are to be taken again, in the list and in the review; one alone is not', () => {
    const far = sitting(0.93, 0.98);
    expect(isFarApart(taken(far))).toBe(true);
    expect(sessionResult(far, athlete).apart.map(({ measure }) => measure)).toEqual(['sittingHeight']);
    expect(isFarApart(taken(sitting(0.93)))).toBe(false);
    expect(isFarApart(taken(sitting(0.93, 0.98, 0.934)))).toBe(false);
  });

  it('are judged by the stature of this session', () => {
    const short = session({ statureM: 1.5, keptAnyway: [oddName('statureM', 1.5)] });
    expect(tapePerson(short, athlete).stature).toBe(1.5);
    expect(tapePerson(session({ statureM: 1.5 }), athlete).stature).toBe(1.8);
  });
});

describe('stature and mass of a session', () => {
  it('count when they are believable beside the last ones', () => {
    expect(countedBody(session({ statureM: 1.805, massKg: 82 }), athlete)).toEqual({
      statureM: 1.805,
      massKg: 82,
    });
    expect(countedBody(session({ statureM: 1.08, massKg: 8 }), athlete)).toEqual({
      statureM: null,
      massKg: null,
    });
  });

  it('of an earlier day are not held against later ones', () => {
    const early = session({ takenOn: '2012-01-01', statureM: 1.45, massKg: 38 });
    expect(countedBody(early, athlete)).toEqual({ statureM: 1.45, massKg: 38 });
    expect(isEarlier(early, athlete)).toBe(true);
    expect(isEarlier(session(), athlete)).toBe(false);
  });
});

describe('the athlete after a session', () => {
  it('has the mean of the readings with its spread and day, and keeps the other measures', () => {
    const after = athleteAfter(sitting(0.94, 0.944), athlete);
    expect(after.tape.sittingHeight).toMatchObject({ valueM: 0.942, takenOn: '2026-06-01' });
    expect(after.tape.sittingHeight!.sdM).toBeLessThan(TAPE_SD.sittingHeight);
    expect(after.tape.footLength).toEqual(athlete.tape.footLength);
    expect(after).toMatchObject({ statureM: 1.8, massKg: 80, measuredOn: '2026-06-01' });
    expect(athleteSchema.safeParse(after).success).toBe(true);
  });

  it('who has grown has the earlier measures carried along with more doubt, new ones as they are', () => {
    const grown = session({ statureM: 1.84, readings: { sittingHeight: [0.96, 0.96] } });
    expect(hasGrown(grown, athlete)).toBe(true);
    const after = athleteAfter(grown, athlete);
    expect(after.tape.footLength!.valueM).toBeCloseTo((0.27 * 1.84) / 1.8, 9);
    expect(after.tape.footLength!.sdM).toBeGreaterThan(TAPE_SD.footLength);
    expect(after.tape.sittingHeight!.valueM).toBe(0.96);
  });

  it('takes nothing that was left unusual, and says what', () => {
    const slip = session({ massKg: 200, readings: { sittingHeight: [1.49] } });
    expect(athleteAfter(slip, athlete)).toMatchObject({ massKg: 80, tape: athlete.tape });
    expect(sessionResult(slip, athlete).left.map(({ measure }) => measure)).toEqual(['sittingHeight']);
  });
});
