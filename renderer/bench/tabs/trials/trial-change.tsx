import type { Format } from '../../../../app/language/format.ts';
import { type Answer, movedFromNow } from '../../../../core/trial/answers.ts';
import { HELPS } from '../../../../core/trial/helps.ts';
import type { Trial } from '../../../../core/trial/observation.ts';
import type { RankedChange } from '../../../../core/trial/rank-changes.ts';
import { helpsAll } from '../../../../core/trial/told-first.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say, sayMessage, words } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { ChangeButtons } from '../../change-buttons.tsx';
import { changeText, type ProposedChange, plainValue, sideEffectsText } from '../../change-text.ts';
import { observedText } from './observation-text.ts';

/** Side effects worth a line. */
const MOST_EFFECTS = 4;
/** An observation is answered, not only helped with, from this much more on. */
const MUCH = 0.5;

/** A change as the bench shows and takes it. */
export function benchChange(change: RankedChange, seat: number): Extract<ProposedChange, { kind: 'move' }> {
  const { coordinate, from, to, worsens, sideEffects } = change;
  return { kind: 'move', seat, coordinate, from, to, clean: !worsens, sideEffects };
}

/** What a change does for the observations, in words: answered, by the model or in practice, helped, worked against. */
export function answerLines(change: RankedChange, trial: Trial): string[] {
  const practised = (i: number) => change.practiceFor.includes(i);
  const named = (holds: (gain: number, i: number) => boolean) =>
    words().row(
      trial.observations.filter((_, i) => holds(change.gains[i] ?? 0, i)).map((o) => observedText(o)),
    );
  const lines = [
    ['answers.of', named((gain, i) => gain >= MUCH || practised(i))],
    ['trials.answer.some', named((gain, i) => gain >= HELPS && gain < MUCH && !practised(i))],
    ['trials.answer.against', named((gain) => gain <= -HELPS)],
  ] as const;
  return lines.flatMap(([key, what]) => (what ? [say(key, { what })] : []));
}

/** Why it answers: the coaching reason with the model's figures, from the drawing as it is. */
function whyText(answer: Answer, soFar: Answer | undefined, format: Format): string {
  const { reason } = answer;
  const values = movedFromNow(answer, soFar)
    .map(({ quantity, unit, from, to }) => {
      const write = (value: number) => plainValue({ id: quantity, value, unit }, format);
      const [was, is] = [write(from), write(to)];
      return was === is ? null : say('growth.change', { name: quantityName(quantity), from: was, to: is });
    })
    .filter((text) => text !== null);
  return values.length > 0
    ? say('trials.why', { reason: sayMessage({ key: `desire.${reason}` }), values: words().row(values) })
    : '';
}

/** What a change rests on where that is not both: practice alone, or the model's figures alone. */
function basisKey({ basis, relevance }: RankedChange) {
  if (basis === 'practice') return 'trials.basis.practice' as const;
  return relevance === 0 ? ('trials.basis.model' as const) : null;
}

interface TrialChangeProps {
  readonly change: RankedChange;
  /** What the drawing answers already, in the order of the trial's observations. */
  readonly soFar: readonly Answer[];
  readonly trial: Trial;
}

/** One change that answers a trial: what it answers and why, what it costs; shown as an outline or applied in one step. */
export function TrialChange({ change, soFar, trial }: TrialChangeProps) {
  const format = useFormat();
  const moves = benchChange(change, trial.seat);
  const text = changeText(moves, format);
  const all = trial.observations.length > 1 && helpsAll(change);
  const whys = change.answers
    .filter((_, i) => (change.gains[i] ?? 0) >= HELPS)
    .map((answer) => whyText(answer, soFar[answer.observation], format))
    .filter(Boolean);
  const basis = basisKey(change);
  const told = sideEffectsText(change.sideEffects, MOST_EFFECTS, format);

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
      {basis && <p className="soft">{say(basis)}</p>}
      {told && <p className="note-effects soft">{say('notes.side-effects', { effects: told })}</p>}
      {change.worsens && <p>{say('notes.not-clean')}</p>}
      <ChangeButtons change={moves} text={text} />
    </li>
  );
}
