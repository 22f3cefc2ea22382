import { say } from '../language/messages.ts';
import { inShownWords } from '../language/shown-words.tsx';

const CAUTIONS = ['pain', 'strap', 'water', 'minors', 'rules'] as const;

/** The cautions that the product carries: plain and short. */
export const CautionList = inShownWords(() => {
  return (
    <ul className="cautions">
      {CAUTIONS.map((caution) => (
        <li key={caution}>{say(`start.caution.${caution}`)}</li>
      ))}
    </ul>
  );
});
