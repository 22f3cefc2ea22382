import { describe, expect, it } from 'vitest';
import { driveForceOf } from '../../../core/evaluation/seat-state.ts';
import { strokeOfFit } from '../../../core/stroke/stroke-of-fit.ts';
import { strokeInstants, USUAL_STROKE } from '../../../core/under-way/stroke-forcing.ts';
import { exampleFit } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';

const fit = exampleFit();
const report = valuesOf(fit);
const crew = strokeOfFit(fit, report);
const afloat = report.afloat.ready;
if (afloat.kind !== 'afloat') throw new Error(afloat.kind);
const COUNT = 32;
const instants = strokeInstants(crew, afloat, { count: COUNT, shape: USUAL_STROKE });
const strong = strokeInstants(crew, afloat, { count: COUNT, shape: { ...USUAL_STROKE, strength: 2 } });

describe('one stroke of the example single', () => {
  it('has its mean force in the drive, none while the blade is in the air', () => {
    const drive = instants.slice(0, COUNT / 2);
    const mean = drive.reduce((sum, { forward }) => sum + forward, 0) / drive.length;
    // A half sine read at 16 even instants: its mean is short by π²/(12·16²).
    expect(mean / driveForceOf(crew.seats[0]!)).toBeCloseTo(1, 2);
    for (const { forward, bladeMoment, up } of instants.slice(COUNT / 2))
      expect([forward, bladeMoment, up]).toEqual([0, 0, 0]);
  });

  it('begins and ends its force at nothing, highest in the middle of the drive, and twice as much when pulled twice as hard', () => {
    expect(instants[0]!.forward).toBe(0);
    const highest = instants.reduce(
      (best, each, i) => (each.forward > instants[best]!.forward ? i : best),
      0,
    );
    expect(highest).toBe(COUNT / 4);
    for (const [i, { forward }] of instants.entries()) expect(strong[i]!.forward).toBeCloseTo(2 * forward, 9);
  });

  it('turns the bow up as a force under the water does: the moment has the sign of force × depth', () => {
    for (const { forward, bladeMoment } of instants.slice(1, COUNT / 2)) {
      const arm = bladeMoment / forward;
      expect(arm).toBeGreaterThan(0);
      expect(arm).toBeLessThan(0.6);
    }
  });

  it('has the masses of the whole boat in every instant, heights counted from the water plane', () => {
    for (const { places, momentX, momentZ } of instants) {
      const mass = places.reduce((sum, each) => sum + each.mass, 0);
      expect(mass).toBeCloseTo(afloat.massKg, 9);
      expect(momentX).toBeCloseTo(
        places.reduce((sum, each) => sum + each.mass * each.x, 0),
        9,
      );
      // The crew kneels: its centre is 0.3 to 0.9 m over the keel, so that much less the draft over the water.
      const over = momentZ / mass + afloat.draft;
      expect(Math.abs(over - afloat.centreOfMass.z)).toBeLessThan(0.12);
    }
  });
});
