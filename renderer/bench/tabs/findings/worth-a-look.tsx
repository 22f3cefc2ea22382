import type { Unknown } from '../../../../core/evaluation/unknowns.ts';
import { say, words } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { hrefOf } from '../../../route/route.ts';
import { useFit } from '../../bench-context.tsx';

/** What is unknown of a seat, in one line: each look once, what it would settle before it. Empty where nothing is. */
export function looksText(unknowns: readonly Unknown[]): string {
  const looks = [...new Set(unknowns.map(({ look }) => look))];
  const texts = looks.map((look) => {
    const names = unknowns.filter((u) => u.look === look).map((u) => quantityName(u.quantity));
    return say(`notes.look.${look ?? 'none'}`, { names: words().row(names) });
  });
  return words().row(texts);
}

/** One quiet line on what body and fittings cannot tell, and which look would. */
export function WorthALook({ seat }: { seat: number }) {
  const fitId = useFit((state) => state.fitId);
  const unknowns = useFit(({ report }) => report.unknowns).filter((u) => u.seat === seat);
  if (unknowns.length === 0) return null;
  return (
    <p className="soft" data-unknowns={unknowns.length}>
      {say('notes.look', { looks: looksText(unknowns) })}{' '}
      {fitId !== '' && <a href={hrefOf({ page: 'photograph', id: fitId })}>{say('photograph.open')}</a>}
    </p>
  );
}
