import { useEffect, useRef, useState } from 'react';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { FieldFrame, type FrameProps } from './field-frame.tsx';
import { MEASURE_KINDS, type MeasureKind, stepOfKey } from './measure-kinds.ts';
import { type EntryRule, type ReadEntry, readEntry, stepEntry } from './read-entry.ts';
import { StepButtons } from './step-buttons.tsx';

export interface MeasureFieldProps extends FrameProps {
  /** In the document's unit; null while nothing has been entered. */
  readonly value: number | null;
  readonly kind: MeasureKind;
  readonly min: number;
  readonly max: number;
  readonly onEnter: (value: number) => void;
  /** A press of an arrow or a stepper; left out, it is entered like any other. */
  readonly onNudge?: (value: number) => void;
  /** Called when the field is emptied; left out, the field may not be empty. */
  readonly onEmpty?: () => void;
  /** Where a step from an empty entry begins; if left out, zero or the nearest allowed value. */
  readonly from?: number;
  /** Steppers beside the entry. */
  readonly stepped?: boolean;
  /** Updates the value during a drag without a render of React; returns a function that stops it. */
  readonly follow?: (show: (value: number) => void) => () => void;
}

/**
 * One measure: an entry that understands how people write lengths, masses and angles, with arrow keys and steppers. An invalid
 * text is explained, and the last valid value stays.
 */
export function MeasureField(props: MeasureFieldProps) {
  const { label, value, kind } = props;
  const format = useFormat();
  const { input, shown, refused, enter, nudge, onKeyDown } = useMeasureEntry(props);
  return (
    <FieldFrame {...props} problem={refused ?? props.problem} alert>
      {(wiring) => (
        <div className="measure-entry">
          <input
            {...wiring}
            ref={input}
            className="entry"
            type="text"
            role="spinbutton"
            autoComplete="off"
            spellCheck={false}
            defaultValue={shown}
            placeholder={MEASURE_KINDS[kind].unit(format)}
            aria-valuenow={value ?? undefined}
            aria-valuemin={props.min}
            aria-valuemax={props.max}
            aria-valuetext={shown}
            onKeyDown={onKeyDown}
            onBlur={enter}
            onFocus={(event) => event.target.select()}
          />
          {props.stepped && (
            <StepButtons label={label} onStep={(sign) => nudge(sign * MEASURE_KINDS[kind].step)} />
          )}
        </div>
      )}
    </FieldFrame>
  );
}

/** The text of a measure's entry: read when the entry is left or stepped; says why a text is refused. */
function useMeasureEntry(props: MeasureFieldProps) {
  const { value, kind, min, max } = props;
  const format = useFormat();
  const input = useRef<HTMLInputElement>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const shown = value === null ? '' : MEASURE_KINDS[kind].show(value, format);
  const rule: EntryRule = { kind, min, max, format, mayBeEmpty: props.onEmpty !== undefined };
  useShownValue(input, { shown, kind, follow: props.follow });

  /** Shows the last valid value in the entry again. */
  function putBack(): void {
    if (input.current) input.current.value = shown;
  }

  function take(read: ReadEntry, use: (value: number) => void): void {
    if (read.kind === 'refused') {
      setRefused(value === null ? read.why : say('field.kept', { why: read.why, value: shown }));
      if (value !== null) putBack();
      return;
    }
    setRefused(null);
    if (read.kind === 'emptied') {
      props.onEmpty?.();
      return;
    }
    putBack();
    use(read.value);
  }

  function enter(): void {
    const text = input.current?.value ?? '';
    if (text !== shown) take(readEntry(text, rule), props.onEnter);
  }

  function nudge(step: number): void {
    const text = input.current?.value ?? '';
    const typed = text === shown ? null : readEntry(text, rule);
    const from =
      typed?.kind === 'value' ? typed.value : (value ?? Math.min(max, Math.max(min, props.from ?? 0)));
    take(stepEntry(from, step, rule), props.onNudge ?? props.onEnter);
  }

  function onKeyDown(event: React.KeyboardEvent): void {
    // Before Tab moves on: what the entry calls for is there to go to.
    if (event.key === 'Enter' || event.key === 'Tab') enter();
    if (event.key === 'Escape') {
      putBack();
      setRefused(null);
    }
    const step = stepOfKey(kind, event);
    if (step === 0) return;
    event.preventDefault();
    nudge(step);
  }

  return { input, shown, refused, enter, nudge, onKeyDown };
}

/** Shows the value in the entry: after each render, and between renders during a drag. */
function useShownValue(
  input: React.RefObject<HTMLInputElement | null>,
  { shown, kind, follow }: { shown: string; kind: MeasureKind; follow: MeasureFieldProps['follow'] },
): void {
  const format = useFormat();
  useEffect(() => {
    if (input.current) input.current.value = shown;
  }, [input, shown]);
  useEffect(
    () =>
      follow?.((now) => {
        if (!input.current) return;
        input.current.value = MEASURE_KINDS[kind].show(now, format);
        input.current.setAttribute('aria-valuenow', String(now));
      }),
    [input, follow, kind, format],
  );
}
