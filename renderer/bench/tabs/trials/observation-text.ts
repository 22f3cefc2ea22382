import type { Observation, Trial } from '../../../../core/trial/observation.ts';
import { say } from '../../../language/messages.ts';

/** What was observed, without its strength: "Rear toes: numb", "Bow digs in". */
export function observedText(observation: Observation): string {
  if (observation.kind === 'boat') return say(`sign.${observation.sign}`);
  const place = say(`place.${observation.place}`);
  return say('observed.body', { place, feeling: say(`feeling.${observation.feeling}`) });
}

/** The same with its strength: "Rear toes: numb (moderate)". */
export function observationText(observation: Observation): string {
  const strength = say(`trial.strength.${observation.strength as 1 | 2 | 3}`);
  return say('observed.strength', { what: observedText(observation), strength });
}

/** What it was like on the water: "Rippled water, side wind". */
export function conditionsText({ water, wind }: Pick<Trial, 'water' | 'wind'>): string {
  return say('trials.conditions', { water: say(`trials.water.${water}`), wind: say(`trials.wind.${wind}`) });
}
