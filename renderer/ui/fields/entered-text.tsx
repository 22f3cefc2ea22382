import { useState } from 'react';
import { TextField } from './text-field.tsx';

/**
 * A text that takes effect when its entry is left, so that the page does not change while somebody types. `read` gives the value of
 * the text, or null if it has none: the entry then shows its earlier text again.
 */
export function EnteredText(props: {
  label: string;
  labelHidden?: boolean;
  value: string;
  lines?: number;
  maxLength?: number;
  /** The text is not valid; another element says why. */
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
