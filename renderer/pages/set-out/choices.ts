import type { Language } from '../../../app/language/languages.ts';
import type { Fit } from '../../../core/document/fit-schema.ts';
import type { PaperName } from '../../../core/setout/paper.ts';
import type { PaperOptions } from '../../../core/setout/set-out-options.ts';
import { TEMPLATE_IDS, type TemplateId } from '../../../core/setout/template-ids.ts';
import { words } from '../../language/messages.ts';

/** What the boatbuilder chooses on the page. */
export interface Choices {
  readonly seat: number;
  /** `present`, or a revision's id. */
  readonly state: string;
  readonly paper: PaperName;
  /** Language of the sheet and the templates. */
  readonly language: Language;
  readonly options: PaperOptions;
  readonly templates: readonly TemplateId[];
}

/** First choices: the first seat somebody kneels in, every template, units as lengths are shown. */
export function firstChoices(seat: number, lengthUnit: 'cm' | 'mm' | 'in'): Omit<Choices, 'state'> {
  const units = lengthUnit === 'in' ? 'in' : 'mm';
  return {
    seat,
    paper: units === 'in' ? 'Letter' : 'A4',
    language: words().language,
    options: { units },
    templates: TEMPLATE_IDS,
  };
}

/** Seats that somebody kneels in, bow first. */
export function takenSeats({ seats }: Fit): { index: number; name: string }[] {
  return seats.flatMap(({ athlete }, index) => (athlete ? [{ index, name: athlete.name }] : []));
}
