import { useState } from 'react';
import type { Format } from '../../../../app/language/format.ts';
import { LEVEL_TARGET, type Levelled, levelCrew } from '../../../../core/crew/level-crew.ts';
import type { SeatShift } from '../../../../core/crew/shift-seat.ts';
import type { Fit } from '../../../../core/document/fit-schema.ts';
import { announce } from '../../../announce/announce.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say, words } from '../../../language/messages.ts';
import { Button } from '../../../ui/button.tsx';
import { useDocument, useFit } from '../../bench-context.tsx';
import { nameInSeat } from '../../crew-names.ts';

/** Shifts smaller than this are none, metres. */
const NO_SHIFT = 0.0005;

function shiftText({ aft, out }: SeatShift, format: Format): string {
  const part = (
    by: number,
    more: 'crew.level.aft' | 'crew.level.out',
    less: 'crew.level.forward' | 'crew.level.in',
  ) =>
    Math.abs(by) < NO_SHIFT
      ? []
      : [say(by > 0 ? more : less, { by: format.length(Math.abs(by), { fine: true }) })];
  const parts = [
    ...part(aft, 'crew.level.aft', 'crew.level.forward'),
    ...part(out, 'crew.level.out', 'crew.level.in'),
  ];
  return words().row(parts) || say('crew.level.stays');
}

/** Finds the least shift of all settings that levels the boat, shows it as a ghost, and takes it in one step. */
export function CrewLevel() {
  const document = useDocument();
  const format = useFormat();
  const fit = useFit((state) => state.fit);
  const ghost = useFit((state) => state.ghost);
  const [found, setFound] = useState<{ of: Fit; levelled: Levelled } | null>(null);
  const levelled = found?.of === fit ? found.levelled : null;
  const trim = format.length(LEVEL_TARGET.trim, { fine: true });

  const shiftOf = (shift: Levelled['shifts'][number], seat: number) =>
    say('crew.level.shift', { name: nameInSeat(fit, seat), shift: shiftText(shift, format) });

  function find(): void {
    const answer = levelCrew(document.evaluator, fit);
    setFound({ of: fit, levelled: answer });
    announce(words().list(answer.shifts.map(shiftOf)));
  }

  function take(answer: Levelled): void {
    document.showGhost(null);
    document.apply(say('crew.level.step'), () => answer.fit);
  }

  return (
    <>
      <p className="soft">{say('crew.level.what', { trim })}</p>
      {!levelled && <Button onClick={find}>{say('crew.level')}</Button>}
      {levelled && (
        <>
          <ul className="crew-shifts">
            {levelled.shifts.map((shift, i) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: a seat is its place in the boat
              <li key={i}>{shiftOf(shift, i)}</li>
            ))}
          </ul>
          <Missing levelled={levelled} format={format} />
          <p className="row">
            <Button
              look="words"
              aria-pressed={ghost === levelled.fit}
              onClick={() => document.showGhost(ghost === levelled.fit ? null : levelled.fit)}
            >
              {say(ghost === levelled.fit ? 'notes.hide' : 'notes.show')}
            </Button>
            <Button look="words" onClick={() => take(levelled)}>
              {say('notes.take')}
            </Button>
          </p>
        </>
      )}
    </>
  );
}

/** Missing less than this is none, metres. */
const MET = 0.0005;

function Missing({ levelled: { missing }, format }: { levelled: Levelled; format: Format }) {
  if (!missing || (Math.abs(missing.trim) < MET && Math.abs(missing.offCentre) < MET)) return null;
  const mm = (value: number) => format.length(Math.abs(value), { fine: true });
  return (
    <p className="soft">
      {say('crew.level.missing', {
        trim: mm(missing.trim),
        way: missing.trim < 0 ? 'up' : 'down',
        across: mm(missing.offCentre),
        side: missing.offCentre < 0 ? 'left' : 'right',
      })}
    </p>
  );
}
