import { Button, Dialog, DialogTrigger, Popover } from 'react-aria-components';
import { LANGUAGE_TAGS } from '../../app/contract/display.ts';
import { LANGUAGES } from '../../app/language/languages.ts';
import { changeLanguage } from '../display/change-language.ts';
import { type DisplaySettings, displaySettings } from '../display/display-settings.ts';
import { useDisplay } from '../display/use-display.ts';
import { say } from '../language/messages.ts';
import { hrefOf } from '../route/route.ts';
import { ChoiceField } from '../ui/fields/choice-field.tsx';

const set = (change: Partial<DisplaySettings>) => displaySettings.setState(change);

/** A person's display settings, and the link to the club's library. */
export function DisplayChoices() {
  return (
    <DialogTrigger>
      <Button className="button bare">{say('menu.settings')}</Button>
      <Popover placement="bottom end" offset={6}>
        <Dialog className="popover stack" aria-label={say('menu.settings')}>
          {({ close }) => (
            <>
              <Choices />
              <a href={hrefOf({ page: 'archive' })} onClick={close}>
                {say('library.title')}
              </a>
            </>
          )}
        </Dialog>
      </Popover>
    </DialogTrigger>
  );
}

/** Language, theme, units and decimal mark. */
function Choices() {
  const now = useDisplay();
  return (
    <>
      <ChoiceField
        label={say('display.language')}
        value={now.language}
        onChange={(language) => void changeLanguage(language)}
        options={[
          { value: 'system', name: say('display.theme.system') },
          ...LANGUAGE_TAGS.map((tag) => ({ value: tag, name: LANGUAGES[tag] })),
        ]}
      />
      <ChoiceField
        label={say('display.theme')}
        value={now.theme}
        onChange={(theme) => set({ theme })}
        options={[
          { value: 'system', name: say('display.theme.system') },
          { value: 'light', name: say('display.theme.light') },
          { value: 'dark', name: say('display.theme.dark') },
        ]}
      />
      <ChoiceField
        label={say('display.length')}
        value={now.length}
        onChange={(length) => set({ length })}
        options={(['cm', 'mm', 'in'] as const).map((unit) => ({ value: unit, name: unit }))}
      />
      <ChoiceField
        label={say('boat.class-check.least-mass')}
        value={now.mass}
        onChange={(mass) => set({ mass })}
        options={(['kg', 'lb'] as const).map((unit) => ({ value: unit, name: unit }))}
      />
      <ChoiceField
        label={say('display.decimal')}
        value={now.decimal}
        onChange={(decimal) => set({ decimal })}
        options={[
          { value: 'system', name: say('display.decimal.system') },
          { value: 'point', name: say('display.decimal.point') },
          { value: 'comma', name: say('display.decimal.comma') },
        ]}
        hint={say('display.entry')}
      />
    </>
  );
}
