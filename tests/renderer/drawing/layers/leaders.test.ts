import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { NotePlace } from '../../../../renderer/document/bench-view.ts';
import { crossingsOf, leadersOf, partAnchors } from '../../../../renderer/drawing/layers/leaders.ts';
import { exampleFit } from '../../../core/example/example-fit.ts';
import { drawnScene } from '../view/drawn-scene.ts';

const SEED = 4711;
const scene = drawnScene(exampleFit(), { width: 919, height: 758 });
const PARTS = [
  'kneePad',
  'rearRest',
  'frontFoot',
  'paddle',
  'trunk',
  'hull',
  'frontKnee',
  'kneelingKnee',
  'hip',
  'support',
] as const satisfies readonly NotePlace['part'][];

/** Notes of these parts from the top of the margin down, as far apart as notes are. */
const notesOf = (parts: readonly NotePlace['part'][]): NotePlace[] =>
  parts.map((part, k) => ({ findingId: part, part, severity: 'check', clientY: 60 + 78 * k }));

/** The strip lies above the plan: where the plan's name stands in the upper lane, no leader goes there. */
const REACHED = PARTS.filter((part) => part !== 'hull');

describe('leader lines', () => {
  it('go to the strip only where the plan’s name is not in the way', () => {
    expect(leadersOf(scene, notesOf(['hull']), 0)).toEqual([]);
    const whole = drawnScene(exampleFit(), { width: 919, height: 758 }, { showing: 'boat' });
    expect(leadersOf(whole, notesOf(['hull']), 0)).toHaveLength(1);
  });

  it('end at what their notes speak of, and keep to gutter and lanes until then', () => {
    for (const part of REACHED) {
      const [leader] = leadersOf(scene, notesOf([part]), 0);
      expect(leader!.path.at(-1)).toEqual(partAnchors(scene, part)[0]!.at);
      const { plan, section } = scene.layout.windows;
      const run = leader!.path[3]!.y;
      expect(run < plan.top || (run > plan.top + plan.height && run < section.top)).toBe(true);
    }
  });

  it('cross one another nowhere, whatever stands in the margin in whatever order', () => {
    console.log(`seed ${SEED}`);
    const drawn: number[] = [];
    fc.assert(
      fc.property(fc.shuffledSubarray([...REACHED], { minLength: 2, maxLength: 5 }), (parts) => {
        const leaders = leadersOf(scene, notesOf(parts), 0);
        expect(crossingsOf(leaders.map(({ path }) => path)), parts.join()).toBe(0);
        expect(leaders[0]!.part).toBe(parts[0]);
        drawn.push(leaders.length / parts.length);
      }),
      { seed: SEED, numRuns: 400 },
    );
    const mean = drawn.reduce((sum, share) => sum + share, 0) / drawn.length;
    console.log(`${(100 * mean).toFixed(0)} % of the leaders asked for are drawn`);
    expect(mean).toBeGreaterThan(0.75);
  });

  it('of a note that is pointed at is always drawn', () => {
    for (const lit of REACHED) {
      const leaders = leadersOf({ ...scene, lit }, notesOf(PARTS), 0);
      expect(leaders.map(({ part }) => part)).toContain(lit);
      expect(crossingsOf(leaders.map(({ path }) => path))).toBe(0);
    }
  });

  it('are drawn one for each part: a second note of the same part adds none', () => {
    const parts = leadersOf(scene, notesOf(['trunk', 'trunk', 'kneePad', 'kneePad']), 0).map(
      ({ part }) => part,
    );
    expect(parts).toEqual(['trunk', 'kneePad']);
  });
});
