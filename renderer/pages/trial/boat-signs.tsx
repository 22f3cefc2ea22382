import { BOAT_SIGNS } from '../../../core/trial/observation.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { StrengthField } from './strength-field.tsx';
import { type SeenSign, withSign } from './trial-values.ts';

/** What the boat did: each sign is named by a press, and then weighed. */
export function BoatSigns(props: {
  seen: readonly SeenSign[];
  onChange: (seen: readonly SeenSign[]) => void;
}) {
  const { seen, onChange } = props;
  return (
    <ul className="boat-signs">
      {BOAT_SIGNS.map((sign) => {
        const entry = seen.find((one) => one.sign === sign);
        const name = say(`sign.${sign}`);
        return (
          <li key={sign}>
            <Button
              className="boat-sign"
              aria-pressed={entry !== undefined}
              onClick={() => onChange(withSign(seen, sign))}
            >
              {name}
            </Button>
            {entry && (
              <StrengthField
                what={name}
                value={entry.strength}
                onChange={(strength) =>
                  onChange(seen.map((one) => (one.sign === sign ? { ...one, strength } : one)))
                }
              />
            )}
          </li>
        );
      })}
    </ul>
  );
}
