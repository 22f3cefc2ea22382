import type { SideEffect } from '../../../../core/evaluation/finding.ts';
import { useFormat } from '../../../display/use-display.ts';
import { say } from '../../../language/messages.ts';
import { quantityName } from '../../../language/sentences.ts';
import { SeverityMark } from '../../../ui/severity-mark.tsx';
import { plainValue } from '../../change-text.ts';

/** Findings that move, each with its mark and word as it will be, its values, and the word it had before. */
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
              <span>{say(`severity.${severityTo}`)}</span>
              {severityFrom !== severityTo && (
                <span className="soft">
                  {' '}
                  {say('growth.turned', { before: say(`severity.${severityFrom}`) })}
                </span>
              )}
              <br />
              {say('growth.change', { name: quantityName(id), from: write(from), to: write(to) })}
            </span>
          </li>
        );
      })}
    </ul>
  );
}
