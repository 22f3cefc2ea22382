import { useId } from 'react';

/** One of many, by the browser's own list. */
export function SelectField<T extends string>(props: {
  label: string;
  value: T | null;
  options: readonly { readonly value: T; readonly name: string }[];
  onChange: (value: T) => void;
  /** Shown while nothing has been chosen. */
  placeholder?: string;
  hint?: string;
}) {
  const id = useId();
  return (
    <div className="field">
      <label className="field-label" htmlFor={id}>
        {props.label}
      </label>
      <select
        id={id}
        className="entry"
        value={props.value ?? ''}
        onChange={(event) => props.onChange(event.target.value as T)}
        aria-describedby={props.hint ? `${id}-hint` : undefined}
      >
        {props.value === null && (
          <option value="" disabled>
            {props.placeholder}
          </option>
        )}
        {props.options.map(({ value, name }) => (
          <option key={value} value={value}>
            {name}
          </option>
        ))}
      </select>
      {props.hint && (
        <span className="field-hint" id={`${id}-hint`}>
          {props.hint}
        </span>
      )}
    </div>
  );
}
