import { useId } from 'react';

/** One line of text (or several), with its label, a hint and what is wrong with it. */
export function TextField(props: {
  label: string;
  value: string;
  onChange: (value: string) => void;
  hint?: string;
  problem?: string | null;
  lines?: number;
  type?: 'text' | 'date' | 'search';
  required?: boolean;
  autoFocus?: boolean;
  maxLength?: number;
}) {
  const id = useId();
  const describedBy = [props.hint && `${id}-hint`, props.problem && `${id}-problem`]
    .filter(Boolean)
    .join(' ');
  const shared = {
    id,
    className: 'entry',
    value: props.value,
    maxLength: props.maxLength ?? (props.lines ? 2000 : 120),
    'aria-required': props.required,
    'aria-invalid': props.problem ? true : undefined,
    'aria-describedby': describedBy || undefined,
    onChange: (event: React.ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) =>
      props.onChange(event.target.value),
  } as const;
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {props.label}
      </label>
      {props.lines ? (
        <textarea {...shared} rows={props.lines} />
      ) : (
        // biome-ignore lint/a11y/noAutofocus: only the first entry of a dialog that the person has just opened asks for it
        <input {...shared} type={props.type ?? 'text'} autoComplete="off" autoFocus={props.autoFocus} />
      )}
      {props.hint && (
        <span className="field-hint" id={`${id}-hint`}>
          {props.hint}
        </span>
      )}
      {props.problem && (
        <span className="field-problem" id={`${id}-problem`}>
          {props.problem}
        </span>
      )}
    </div>
  );
}
