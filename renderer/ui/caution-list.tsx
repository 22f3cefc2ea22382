import { say } from '../language/messages.ts';

const CAUTIONS = ['pain', 'strap', 'water', 'minors', 'rules'] as const;

/** The cautions that the product carries: plain and short. */
export function CautionList() {
  return (
    <ul className="cautions">
      {CAUTIONS.map((caution) => (
        <li key={caution}>{say(`start.caution.${caution}`)}</li>
      ))}
    </ul>
  );
}
