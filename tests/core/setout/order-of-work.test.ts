import { describe, expect, it } from 'vitest';
import { fixingNotes, orderOfWork } from '../../../core/setout/order-of-work.ts';
import { setOutSeat } from '../../../core/setout/set-out.ts';
import { english, plainSpaces } from '../../english.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../example/example-fit.ts';
import { valuesOf } from '../example/values-of.ts';
import { inventedSetOut, ON_A_WEDGE, ROWS_OF_HOLES } from './invented-set-out.ts';

const { seat } = inventedSetOut().work;
const steps = (wanted = {}) => orderOfWork(inventedSetOut(wanted)).map(plainSpaces);
const place = (list: readonly string[], word: RegExp) => list.findIndex((step) => word.test(step));

describe('the order of work', () => {
  it('goes from the centreline to the first kneel on land, and drills nothing before the marks are proved', () => {
    const list = steps({ hardware: ROWS_OF_HOLES });
    const order = [
      /centreline/,
      /Square the centre mark/,
      /^Mark K/,
      /check every mark/,
      /Drill/,
      /Saw the pad/,
      /Saw the rest/,
      /Fix pad and rest dry/,
      /kneels in it on land/,
    ];
    const places = order.map((word) => place(list, word));
    expect(places).not.toContain(-1);
    expect(places).toEqual([...places].sort((a, b) => a - b));
  });

  it('names every mark of the table', () => {
    const [step] = steps().filter((text) => text.startsWith('Mark '));
    for (const name of ['K', 'P1', 'P4', 'R1', 'R2', 'F', 'T']) expect(step).toContain(name);
  });

  it('drills the holes of the list: one size for both, or each its own', () => {
    expect(steps({ hardware: ROWS_OF_HOLES }).join(' ')).toContain(
      'Drill with a depth stop: 6.5 mm for pad and rest, every 25 mm and 20 mm.',
    );
    const mixed = steps({ hardware: { ...ROWS_OF_HOLES, restHolePitchM: null } }).join(' ');
    expect(mixed).toContain('6.5 mm for the pad, every 25 mm and 3.0 mm for the rest');
  });

  it('speaks of foam and of a wedge only where there is one', () => {
    expect(steps().join(' ')).toContain('For the foam, carve to the dashed lines, 10 mm deeper');
    expect(steps({ options: { foamM: 0 } }).join(' ')).not.toMatch(/For the foam/);
    expect(place(steps(), /wedge/)).toBe(-1);
    expect(place(steps({ seat: { frontFoot: ON_A_WEDGE } }), /front wedge/)).toBeGreaterThan(0);
  });

  it('sets a crew’s seat out from its own mark, and that from the boat’s middle', () => {
    const fit = exampleFit([
      exampleSeat(),
      exampleSeat({ side: 'right', athlete: exampleAthlete({ side: 'right' }) }),
    ]);
    const options = { units: 'mm' } as const;
    const stern = setOutSeat({ fit, report: valuesOf(fit), index: 1, options, words: english })!;
    expect(plainSpaces(orderOfWork(stern)[1]!)).toBe(
      'Square seat 2’s mark across 575 mm aft of the centre mark: M, on the centreline.',
    );
  });

  it('writes lengths in the sheet’s unit', () => {
    expect(steps({ options: { units: 'in' } }).join(' ')).toContain('13/32 in deeper');
  });
});

describe('notes on fixing', () => {
  it('speak of bolts, brace, strap and floor as they are planned', () => {
    const notes = fixingNotes(inventedSetOut()).join(' ');
    expect(notes).toContain('Brace the pad forward and to kneeling side');
    expect(notes).toContain('opens by itself when the foot pulls back');
    expect(notes).toContain('Non-slip face');
  });

  it('say plainly what is not planned, and what must be replaced', () => {
    const bare = fixingNotes(
      inventedSetOut({
        seat: {
          kneePad: { ...seat.kneePad, braced: false },
          rearRest: { ...seat.rearRest, strap: 'fixed' },
          frontFoot: { ...seat.frontFoot, nonSlip: false },
        },
      }),
    ).join(' ');
    expect(bare).toContain('No brace planned');
    expect(bare).toContain('replace it before anyone paddles');
    expect(bare).toContain('No non-slip face');
  });

  it('give the pad’s load in whole tens of newtons, as the model’s', () => {
    const load = fixingNotes(inventedSetOut())
      .map(plainSpaces)
      .find((note) => note.includes(' N'));
    expect(load).toMatch(/pushes the pad forward.*estimate/);
    for (const [, newtons] of load!.matchAll(/(\d+) N/g)) expect(Number(newtons) % 10).toBe(0);
  });
});
