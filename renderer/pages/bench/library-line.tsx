import { say } from '../../language/messages.ts';
import { libraryStore } from '../../library/library-store.ts';
import { ownText, sharedText } from '../../library/library-text.ts';

/** In the title block: that the fit is shared, who else has it open, and that news of it waits. Nothing without a library. */
export function LibraryLine({ fitId }: { fitId: string }) {
  const state = libraryStore((heard) => heard.state);
  if (!state?.joined) return null;
  const shared = ownText(state) || sharedText(state, Date.now());
  const names = state.present.filter((one) => one.fitId === fitId).map(({ name }) => name);
  return (
    <p className="title-library">
      <span>{state.held.includes(fitId) ? say('library.held') : shared}</span>
      {names.map((name) => (
        <span key={name}>{say('library.present', { name })}</span>
      ))}
    </p>
  );
}
