import { describe, expect, it } from 'vitest';
import { type Athlete, athleteSchema } from '../../../core/document/athlete-schema.ts';
import { athleteForFit, bodyDifference } from '../../../core/growth/body-difference.ts';

const copy: Athlete = athleteSchema.parse({
  name: 'Liv Aronsen',
  sex: 'female',
  side: 'left',
  statureM: 1.52,
  massKg: 44,
  measuredOn: '2026-03-01',
  tape: {
    kneeHeightSitting: { valueM: 0.472, sdM: 0.004, takenOn: '2026-03-01' },
    footLength: { valueM: 0.229, takenOn: '2026-03-01' },
  },
});
const newer = (more: Partial<Athlete>): Athlete => ({ ...copy, measuredOn: '2026-10-01', ...more });

describe('bodyDifference', () => {
  it('is none for what a tape and a scale repeat to', () => {
    expect(bodyDifference(copy, newer({ statureM: 1.524, massKg: 44.9 }))).toBe(null);
    expect(bodyDifference(copy, newer({ name: 'Liv A. Hansen' }))).toBe(null);
  });

  it('tells stature and mass, now less then', () => {
    const difference = bodyDifference(copy, newer({ statureM: 1.56, massKg: 43 }))!;
    expect(difference.statureM).toBeCloseTo(0.04, 12);
    expect(difference.massKg).toBe(-1);
    expect(difference.tape).toEqual([]);
  });

  it('tells tape measures that read otherwise or are new, and other limits', () => {
    const tape = { ...copy.tape, kneeHeightSitting: { valueM: 0.49 }, armSpan: { valueM: 1.55 } };
    expect(bodyDifference(copy, newer({ tape }))!.tape).toEqual(['kneeHeightSitting', 'armSpan']);
    const limits: Athlete['limits'] = [{ joint: 'trunkForward', maxDeg: 20, reason: 'sore back' }];
    expect(bodyDifference(copy, newer({ limits }))).toMatchObject({ limits: true, statureM: 0 });
  });

  it('does not miss a reading that was only taken away', () => {
    expect(bodyDifference(copy, newer({ tape: {} }))).toBe(null);
  });
});

describe('athleteForFit', () => {
  it('scales a reading that was not taken again, and takes one that was as it is', () => {
    const tape = { ...copy.tape, footLength: { valueM: 0.236, takenOn: '2026-10-01' } };
    const now = athleteForFit(copy, newer({ statureM: 1.596, tape }));
    expect(now.tape.kneeHeightSitting!.valueM).toBeCloseTo(0.472 * 1.05, 9);
    expect(now.tape.kneeHeightSitting!.sdM!).toBeGreaterThan(0.004);
    expect(now.tape.footLength).toEqual({ valueM: 0.236, takenOn: '2026-10-01' });
    expect(now).toMatchObject({ statureM: 1.596, measuredOn: '2026-10-01' });
    expect(athleteSchema.safeParse(now).success).toBe(true);
  });

  it('brings a copy to where nothing differs any more, and again after the next growth', () => {
    const [first, second] = [newer({ statureM: 1.56 }), newer({ statureM: 1.6, measuredOn: '2027-03-01' })];
    const once = athleteForFit(copy, first);
    expect(bodyDifference(once, first)).toBe(null);
    expect(athleteForFit(once, first)).toEqual(once);
    const twice = athleteForFit(once, second);
    expect(bodyDifference(twice, second)).toBe(null);
    expect(twice.tape.kneeHeightSitting!.valueM).toBeCloseTo((0.472 * 1.6) / 1.52, 9);
    expect(twice.tape.kneeHeightSitting!.sdM!).toBeGreaterThan(once.tape.kneeHeightSitting!.sdM!);
  });

  it('leaves every reading as it is where the stature is the same', () => {
    expect(athleteForFit(copy, newer({ massKg: 50 })).tape).toEqual(copy.tape);
  });

  it('never carries a guardian’s consent into a fit', () => {
    const consent = { bodyData: { by: 'Mother', on: '2026-01-02' } };
    expect(athleteForFit(copy, newer({ statureM: 1.56, consent }))).not.toHaveProperty('consent');
  });
});

describe('the edges of a difference', () => {
  it('are half a centimetre and a kilogram (estimates)', () => {
    expect(bodyDifference(copy, newer({ massKg: 44.99 }))).toBe(null);
    expect(bodyDifference(copy, newer({ massKg: 45 }))!.massKg).toBe(1);
    expect(bodyDifference(copy, newer({ statureM: 1.5249 }))).toBe(null);
    expect(bodyDifference(copy, newer({ statureM: 1.5251 }))!.statureM).toBeCloseTo(0.0051, 9);
  });

  it('do not hide a reading corrected on its own day', () => {
    const tape = { ...copy.tape, footLength: { valueM: 0.239, takenOn: '2026-03-01' } };
    expect(bodyDifference(copy, newer({ tape }))!.tape).toEqual(['footLength']);
    expect(athleteForFit(copy, newer({ tape })).tape.footLength!.valueM).toBe(0.239);
  });
});
