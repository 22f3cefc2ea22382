import { quantityName } from '../../../core/findings/sentences.ts';
import type { Fit } from '../../../core/fit/fit-schema.ts';
import type { Answer } from '../../../core/trial/answers.ts';
import type { Trial } from '../../../core/trial/observation.ts';
import type { RankedChange } from '../../../core/trial/rank-changes.ts';
import { HELPS, helpsAll } from '../../../core/trial/told-first.ts';
import { announce } from '../../announce/announce.ts';
import { useFormat } from '../../display/use-display.ts';
import type { Format } from '../../language/format.ts';
import { say } from '../../language/messages.ts';
import { useDocument, useFit } from '../bench/bench-context.tsx';
import { type Change, changeText, sideEffectText, withChange } from '../bench/change-text.ts';
import { inSentence } from '../bench/quantity-text.ts';
import { observedText } from './observation-text.ts';

/** Side effects worth a line. */
const MOST_EFFECTS = 4;
/** An observation is answered, not only helped with, from this much more on. */
const MUCH = 0.5;

/** A change as the bench shows and takes it. */
export function benchChange(change: RankedChange, seat: number): Extract<Change, { kind: 'move' }> {
  const { coordinate, from, to, worsens, sideEffects } = change;
  return { kind: 'move', seat, coordinate, from, to, clean: !worsens, sideEffects };
}

/** What a change does for the observations, in words: answered, helped, worked against. */
function answerLines(change: RankedChange, trial: Trial): string[] {
  const named = (holds: (gain: number) => boolean) =>
    trial.observations
      .filter((_, i) => holds(change.gains[i] ?? 0))
      .map((o) => inSentence(observedText(o)))
      .join(', ');
  const lines = [
    ['trials.answer.much', named((gain) => gain >= MUCH)],
    ['trials.answer.some', named((gain) => gain >= HELPS && gain < MUCH)],
    ['trials.answer.against', named((gain) => gain <= -HELPS)],
  ] as const;
  return lines.flatMap(([key, what]) => (what ? [say(key, { what })] : []));
}

/** Why it answers: the coaching reason with the model's figures. */
function whyText({ reason, moved }: Answer, format: Format): string {
  const values = moved
    .map(({ quantity, unit, from, to }) => {
      const write = format.quantity(quantity);
      const [was, is] = [write(from, unit), write(to, unit)];
      return was === is
        ? null
        : say('trials.value', { name: inSentence(quantityName(quantity)), from: was, to: is });
    })
    .filter((text) => text !== null);
  return values.length > 0 ? say('trials.why', { reason, values: values.join(', ') }) : '';
}

/** One change that answers a trial: what it answers and why, what it costs; shown as an outline or taken in one step. */
export function TrialChange({ change, trial, fit }: { change: RankedChange; trial: Trial; fit: Fit }) {
  const document = useDocument();
  const format = useFormat();
  const ghost = useFit((state) => state.ghost);
  const looking = useFit((state) => state.fitId === '');
  const way = benchChange(change, trial.seat);
  const text = changeText(way, format);
  const changed = withChange(fit, way);
  const isShown = ghost !== null && JSON.stringify(ghost) === JSON.stringify(changed);
  const all = trial.observations.length > 1 && helpsAll(change);
  const whys = change.answers
    .filter((_, i) => (change.gains[i] ?? 0) >= HELPS)
    .map((answer) => whyText(answer, format))
    .filter(Boolean);
  const told = [...change.sideEffects]
    .sort((a, b) => Number(b.severityFrom !== b.severityTo) - Number(a.severityFrom !== a.severityTo))
    .slice(0, MOST_EFFECTS)
    .map((effect) => sideEffectText(effect, format))
    .join(', ');

  function show(): void {
    document.showGhost(isShown ? null : changed);
    if (!isShown) announce(say('spoken.shown', { change: text }));
  }

  return (
    <li className="trial-change">
      <h4>
        {text}
        {all && <span className="trial-best">{say('trials.best')}</span>}
      </h4>
      {answerLines(change, trial).map((line) => (
        <p key={line}>{line}</p>
      ))}
      {[...new Set(whys)].map((why) => (
        <p key={why} className="soft">
          {why}
        </p>
      ))}
      {told && <p className="note-effects soft">{say('notes.side-effects', { effects: told })}</p>}
      {change.worsens && <p>{say('notes.not-clean')}</p>}
      <p className="row">
        <button
          type="button"
          className="button words"
          aria-label={say(isShown ? 'notes.hide.of' : 'notes.show.of', { change: text })}
          onClick={show}
        >
          {say(isShown ? 'notes.hide' : 'notes.show')}
        </button>
        <button
          type="button"
          className="button words"
          disabled={looking}
          aria-label={say('notes.take.of', { change: text })}
          onClick={() => document.apply(text, (now) => withChange(now, way))}
        >
          {say('notes.take')}
        </button>
      </p>
    </li>
  );
}
