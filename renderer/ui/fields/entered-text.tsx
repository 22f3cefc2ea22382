import { useState } from 'react';
import { TextField } from './text-field.tsx';

/**
 * A text that counts once its entry is left: the page does not change under the hand that types. `read` gives what is taken of
 * the text, or null where it cannot be taken: then the entry says again what it said before.
 */
export function EnteredText(props: {
  label: string;
  labelHidden?: boolean;
  value: string;
  lines?: number;
  maxLength?: number;
  /** What stands there cannot be taken; it is said elsewhere why. */
  isInvalid?: boolean;
  read?: (typed: string) => string | null;
  onEnter: (text: string) => void;
}) {
  const { value, read = (typed) => typed, onEnter, ...field } = props;
  const [typed, setTyped] = useState(value);
  const [shown, setShown] = useState(value);
  // Undo, or another page, has changed it meanwhile.
  if (shown !== value) {
    setShown(value);
    setTyped(value);
  }
  const enter = () => {
    const text = read(typed);
    if (text === null) setTyped(value);
    else if (text !== value) onEnter(text);
  };
  return <TextField {...field} value={typed} onChange={setTyped} onLeave={enter} />;
}
