import { FieldFrame, type FrameProps } from './field-frame.tsx';

/** One of many choices, in the browser's own list. */
export function SelectField<T extends string>(
  props: FrameProps & {
    value: T | null;
    options: readonly { readonly value: T; readonly name: string }[];
    onChange: (value: T) => void;
    /** Shown while nothing has been chosen. */
    placeholder?: string;
  },
) {
  return (
    <FieldFrame {...props}>
      {(wiring) => (
        <select
          {...wiring}
          className="entry"
          value={props.value ?? ''}
          onChange={(event) => props.onChange(event.target.value as T)}
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
      )}
    </FieldFrame>
  );
}
