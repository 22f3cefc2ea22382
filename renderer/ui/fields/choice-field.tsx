import { Label, Radio, RadioGroup } from 'react-aria-components';

/** One of a few, all of them in sight. */
export function ChoiceField<T extends string>(props: {
  label: string;
  value: T | null;
  options: readonly { readonly value: T; readonly name: string }[];
  onChange: (value: T) => void;
  hint?: string;
  problem?: string | null;
  labelHidden?: boolean;
}) {
  return (
    <RadioGroup
      className="field"
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
