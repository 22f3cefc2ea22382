import { FieldFrame, type FrameProps } from './field-frame.tsx';

/** One line of text (or several), with its label, a hint and its problem. */
export function TextField(
  props: FrameProps & {
    value: string;
    onChange: (value: string) => void;
    /** Called when the entry is left, or Enter is pressed in its one line. */
    onLeave?: () => void;
    lines?: number;
    type?: 'text' | 'date' | 'search' | 'password';
    autoFocus?: boolean;
    maxLength?: number;
  },
) {
  const { value, lines, onLeave } = props;
  const shared = {
    className: 'entry',
    value,
    maxLength: props.maxLength ?? (lines ? 2000 : 120),
    onChange: (event: React.ChangeEvent<HTMLInputElement | HTMLTextAreaElement>) =>
      props.onChange(event.target.value),
    onBlur: onLeave,
  } as const;
  return (
    <FieldFrame {...props}>
      {(wiring) =>
        lines ? (
          <textarea {...wiring} {...shared} rows={lines} />
        ) : (
          <input
            {...wiring}
            {...shared}
            type={props.type ?? 'text'}
            onKeyDown={onLeave && (({ key }) => key === 'Enter' && onLeave())}
            autoComplete="off"
            // biome-ignore lint/a11y/noAutofocus: only the first entry of a dialog that the person has just opened asks for it
            autoFocus={props.autoFocus}
          />
        )
      }
    </FieldFrame>
  );
}
