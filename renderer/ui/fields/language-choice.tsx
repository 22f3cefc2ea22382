import { LANGUAGES, type Language } from '../../../app/language/languages.ts';
import { say } from '../../language/messages.ts';
import { SelectField } from './select-field.tsx';

/** The language of a page or paper, whatever the screen speaks. */
export function LanguageChoice(props: { value: Language; onChange: (language: Language) => void }) {
  return (
    <SelectField
      label={say('display.language')}
      value={props.value}
      onChange={(language) => props.onChange(language as Language)}
      options={Object.entries(LANGUAGES).map(([value, name]) => ({ value, name }))}
    />
  );
}
