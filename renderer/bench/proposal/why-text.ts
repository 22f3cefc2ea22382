import type { Format } from '../../../app/language/format.ts';
import type { Uncleared } from '../../../core/optimise/why-uncleared.ts';
import { say, words } from '../../language/messages.ts';
import { findingTitle, quantityName } from '../../language/sentences.ts';
import { changeText } from '../change-text.ts';

/** What a proposal left and why, as a sentence. */
export function whyText({ finding: left, why }: Uncleared, format: Format): string {
  const finding = say('why.finding', {
    title: findingTitle(left, format.quantity(left.quantity)),
    severity: say(`severity.${left.severity}`),
  });
  switch (why.kind) {
    case 'choice':
      return say('why.choice', { finding, choice: say(`choose.${why.choice}`) });
    case 'given':
      return say('why.given', { finding });
    case 'locked':
      return say('why.locked', {
        finding,
        fitting: say(`fitting.${why.fitting}`),
        change: changeText(why.move, format),
      });
    case 'against': {
      const change = changeText(why.move, format);
      if (why.spoils.length === 0) return say('why.against.checks', { finding, change });
      const spoils = why.spoils.map(({ id, unit, to, severityTo }) =>
        say('why.spoils', {
          name: quantityName(id),
          value: format.quantity(id)(to, unit),
          severity: say(`severity.${severityTo}`),
        }),
      );
      return say('why.against', { finding, change, spoils: words().row(spoils) });
    }
    case 'limit':
      return say('why.limit', {
        finding,
        joint: say(`joint.${why.joint}`),
        most: format.degrees(why.maxDeg),
      });
    case 'out of reach':
      return say('why.out-of-reach', { finding });
  }
}
