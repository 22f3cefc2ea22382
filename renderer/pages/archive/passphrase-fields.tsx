import { useState } from 'react';
import { SHORTEST_PASSPHRASE } from '../../../app/contract/safekeeping.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { TextField } from '../../ui/fields/text-field.tsx';
import { Tick } from '../../ui/fields/tick.tsx';

/** The passphrase, and the same again. */
export interface TypedPassphrase {
  readonly first: string;
  readonly again: string;
}

/** Whether a file can be encrypted with what is typed. */
export function isPassphrase({ first, again }: TypedPassphrase): boolean {
  return first.length >= SHORTEST_PASSPHRASE && first === again;
}

/** A new passphrase, typed twice, hidden unless shown. */
export function NewPassphrase(props: { typed: TypedPassphrase; onChange: (typed: TypedPassphrase) => void }) {
  const { first, again } = props.typed;
  const [shown, setShown] = useState(false);
  const type = shown ? 'text' : 'password';
  const short = first !== '' && first.length < SHORTEST_PASSPHRASE;
  const differs = again !== '' && !first.startsWith(again) && first !== again;
  return (
    <div className="stack">
      <TextField
        label={say('passphrase.new')}
        hint={say('passphrase.hint', { shortest: SHORTEST_PASSPHRASE })}
        problem={short ? say('passphrase.short', { shortest: SHORTEST_PASSPHRASE }) : null}
        type={type}
        maxLength={500}
        value={first}
        onChange={(value) => props.onChange({ first: value, again })}
      />
      <TextField
        label={say('passphrase.again')}
        problem={differs ? say('passphrase.differs') : null}
        type={type}
        maxLength={500}
        value={again}
        onChange={(value) => props.onChange({ first, again: value })}
      />
      <Tick name={say('passphrase.show')} isOn={shown} onChange={setShown} />
      <p>{say('passphrase.lost')}</p>
    </div>
  );
}

/** Asks for the passphrase of a file that is encrypted. */
export function AskPassphrase(props: {
  wrong: boolean;
  busy: boolean;
  onGiven: (passphrase: string) => void;
  onLeave: () => void;
}) {
  const [passphrase, setPassphrase] = useState('');
  const [shown, setShown] = useState(false);
  return (
    <form
      className="stack"
      onSubmit={(event) => {
        event.preventDefault();
        if (passphrase !== '') props.onGiven(passphrase);
      }}
    >
      <p>{say('passphrase.locked')}</p>
      <TextField
        label={say('passphrase')}
        problem={props.wrong ? say('passphrase.wrong') : null}
        type={shown ? 'text' : 'password'}
        maxLength={500}
        value={passphrase}
        onChange={setPassphrase}
      />
      <Tick name={say('passphrase.show')} isOn={shown} onChange={setShown} />
      <p className="row">
        <Button type="submit" look="chief" disabled={props.busy || passphrase === ''}>
          {say('fits.use')}
        </Button>
        <Button onClick={props.onLeave}>{say('revisions.cancel')}</Button>
      </p>
    </form>
  );
}
