import { useId } from 'react';
import { Term, type TermId } from '../../language/term.tsx';

/** What every field is given beside its value. */
export interface FrameProps {
  readonly label: string;
  /** The trade word of the label, explained on hover. */
  readonly term?: TermId;
  /** Path of the value in its form, `limits.0.reason`: the summary of problems finds the field by it. */
  readonly name?: string;
  readonly hint?: string;
  readonly problem?: string | null;
  readonly required?: boolean;
  /** The value is not valid; another element says why. */
  readonly isInvalid?: boolean;
  /** True when the label is written elsewhere and only spoken here. */
  readonly labelHidden?: boolean;
}

/** What an entry takes over so that its label, hint and problem belong to it. */
export interface EntryWiring {
  readonly id: string;
  readonly name?: string;
  readonly 'aria-required'?: boolean;
  readonly 'aria-invalid'?: true;
  readonly 'aria-describedby'?: string;
}

/** Label, entry, hint and problem of one field. */
export function FieldFrame(
  props: FrameProps & { alert?: boolean; children: (wiring: EntryWiring) => React.ReactNode },
) {
  const id = useId();
  const { name, hint, problem, required } = props;
  const describedBy = [hint && `${id}-hint`, problem && `${id}-problem`].filter(Boolean).join(' ');
  return (
    <div className="field" data-field={name}>
      <label className={props.labelHidden ? 'only-spoken' : 'field-label'} htmlFor={id}>
        {props.term ? <Term term={props.term}>{props.label}</Term> : props.label}
      </label>
      {props.children({
        id,
        name,
        'aria-required': required,
        'aria-invalid': problem || props.isInvalid ? true : undefined,
        'aria-describedby': describedBy || undefined,
      })}
      {hint && (
        <span className="field-hint" id={`${id}-hint`}>
          {hint}
        </span>
      )}
      {problem && (
        <span className="field-problem" id={`${id}-problem`} role={props.alert ? 'alert' : undefined}>
          {problem}
        </span>
      )}
    </div>
  );
}
