import { useCall } from '../client/use-call.ts';
import { say, words } from '../language/messages.ts';
import { hrefOf } from '../route/route.ts';

/** Records that were changed in two places at once, or the one with `id` if it was: a link to where that is decided. */
export function ToDecide({ id }: { id?: string }) {
  const { value } = useCall('conflicts.list', {});
  const open = (value ?? []).filter((one) => id === undefined || one.id === id);
  const titles = [...new Set(open.map(({ title }) => title))];
  if (titles.length === 0) return null;
  return (
    <p className="odd-mark">
      <a href={hrefOf({ page: 'archive' })}>
        {say('sheet.labelled', { label: say('conflicts.title'), text: words().row(titles) })}
      </a>
    </p>
  );
}
