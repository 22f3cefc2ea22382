import type { SideEffect } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { plainValue } from '../../change-text.ts';

/** Findings that move, each with its mark, its values, and the word as it will be and was; good ones that stay good in one line. */
export function ChangeList({ changes }: { changes: readonly SideEffect[] }) {
  const format = useFormat();
  return (
    <ul className="finding-changes">
      {changes.map(({ id, seat, unit, from, to, severityFrom, severityTo }) => {
        const write = (value: number) => plainValue({ id, value, unit }, format);
        return (
          <li key={`${id} ${seat}`} data-severity={severityTo}>
            <SeverityMark />
            <span>
              {say('growth.change', { name: quantityName(id), from: write(from), to: write(to) })}
              <span className={severityTo === 'good' && severityFrom === 'good' ? 'only-spoken' : 'soft'}>
                {' '}
                {say(`severity.${severityTo}`)}
                {severityFrom !== severityTo && (
                  <> {say('growth.turned', { before: say(`severity.${severityFrom}`) })}</>
                )}
              </span>
            </span>
          </li>
        );
      })}
    </ul>
  );
}
