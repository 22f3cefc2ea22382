import { say } from '../../language/messages.ts';
import { ChoiceField } from '../../ui/fields/choice-field.tsx';

/** How strong something was: slight, clear, strong. */
export function StrengthField(props: { what: string; value: number; onChange: (strength: number) => void }) {
  return (
    <ChoiceField
      label={say('observed.body', { place: props.what, feeling: say('trial.strength') })}
      labelHidden
      value={String(props.value)}
      onChange={(strength) => props.onChange(Number(strength))}
      options={([1, 2, 3] as const).map((strength) => ({
        value: String(strength),
        name: say(`trial.strength.${strength}`),
      }))}
    />
  );
}
