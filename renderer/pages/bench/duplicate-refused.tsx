import { useEffect } from 'react';
import { create } from 'zustand';
import type { CallError } from '../../../app/contract/result.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import { useDocument } from '../../bench/bench-context.tsx';
import { say } from '../../language/messages.ts';
import { go } from '../../route/route.ts';
import { Button } from '../../ui/button.tsx';
import { duplicateFit } from '../new-fit/duplicate-fit.ts';

/** Why the fit on the bench was not duplicated; the menu of the drawing and the finder both try it. */
const refusal = create<{ readonly error: CallError | null }>(() => ({ error: null }));
const forget = () => refusal.setState({ error: null });

/** Makes a second fit like the one on the bench, and opens it. */
export async function duplicateAndOpen(fit: Fit): Promise<void> {
  const made = await duplicateFit(fit);
  refusal.setState({ error: made.ok ? null : made.error });
  if (made.ok) go({ page: 'fit', id: made.value.id });
}

/** Says why the fit was not duplicated, until it is, or the message is closed. */
export function DuplicateRefused() {
  const document = useDocument();
  const { error } = refusal();
  useEffect(() => forget, []);
  if (!error) return null;
  return (
    <div className="bench-banner" role="alert">
      <p>{error.message}</p>
      <Button onClick={() => void duplicateAndOpen(document.getState().fit)}>{say('error.retry')}</Button>
      <Button onClick={forget}>{say('menu.close')}</Button>
    </div>
  );
}
