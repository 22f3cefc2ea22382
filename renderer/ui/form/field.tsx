import { ChoiceField } from '../fields/choice-field.tsx';
import type { FrameProps } from '../fields/field-frame.tsx';
import { MeasureField, type MeasureFieldProps } from '../fields/measure-field.tsx';
import type { MeasureKind } from '../fields/measure-kinds.ts';
import { SelectField } from '../fields/select-field.tsx';
import { TextField } from '../fields/text-field.tsx';
import { Tick } from '../fields/tick.tsx';
import type { FieldBinding } from './use-form.ts';

type Options = readonly { readonly value: string; readonly name: string }[];

type FieldProps = FrameProps &
  (
    | (FieldBinding<string> & { as: 'text' | 'date'; autoFocus?: boolean; maxLength?: number })
    | (FieldBinding<string> & { as: 'notes'; lines: number })
    | (FieldBinding<number | null> & { as: MeasureKind } & Pick<MeasureFieldProps, 'stepped' | 'from'>)
    | (FieldBinding<string | null> & { as: 'choice' | 'select'; options: Options; placeholder?: string })
    | (FieldBinding<boolean> & { as: 'tick' })
  );

/** One field of a form, bound by `form.at(…)`: the entry that fits its kind, with what the schema asks of it. */
export function Field(props: FieldProps) {
  switch (props.as) {
    case 'text':
    case 'date':
      return <TextField {...props} type={props.as} />;
    case 'notes':
      return <TextField {...props} />;
    case 'choice':
      return <ChoiceField {...props} />;
    case 'select':
      return <SelectField {...props} />;
    case 'tick':
      return <Tick name={props.label} isOn={props.value} onChange={props.onChange} />;
    default: {
      const { as, onChange, mayBeEmpty, isWhole } = props;
      return (
        <MeasureField
          {...props}
          kind={as}
          onEnter={(value) => onChange(isWhole ? Math.round(value) : value)}
          onEmpty={mayBeEmpty ? () => onChange(null) : undefined}
        />
      );
    }
  }
}
