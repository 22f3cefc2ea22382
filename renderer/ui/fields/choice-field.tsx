import { Label, Radio, RadioGroup } from 'react-aria-components';
import type { FrameProps } from './field-frame.tsx';

/** One of a few choices, all of them visible. */
export function ChoiceField<T extends string>(
  props: FrameProps & {
    value: T | null;
    options: readonly { readonly value: T; readonly name: string }[];
    onChange: (value: T) => void;
  },
) {
  return (
    <RadioGroup
      className="field"
      data-field={props.name}
      value={props.value}
      onChange={(value) => props.onChange(value as T)}
      orientation="horizontal"
      isInvalid={Boolean(props.problem)}
    >
      <Label className={props.labelHidden ? 'only-spoken' : 'field-label'}>{props.label}</Label>
      <div className="choices">
        {props.options.map(({ value, name }) => (
          <Radio key={value} className="choice" value={value}>
            {name}
          </Radio>
        ))}
      </div>
      {props.hint && <span className="field-hint">{props.hint}</span>}
      {props.problem && <span className="field-problem">{props.problem}</span>}
    </RadioGroup>
  );
}
