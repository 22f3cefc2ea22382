import type { OpenedFit } from '../../../app/contract/records.ts';
import type { Language } from '../../../app/language/languages.ts';
import type { PaperName } from '../../../core/setout/paper.ts';
import type { ShowView } from '../../../core/show/show-picture.ts';
import { PRESENT } from '../../document/use-fit-states.ts';

/** What coach and athlete have chosen to look at. Nothing of it is remembered. */
export interface ShowChoices {
  readonly seat: number;
  /** `present`, or a revision's id. */
  readonly now: string;
  /** A revision's id, `present`, or null for nothing. */
  readonly before: string | null;
  readonly view: ShowView;
  readonly showsMass: boolean;
  readonly paper: PaperName;
  /** What the athlete reads on screen and on paper. */
  readonly language: Language;
}

/** First the present against the newest revision that differs from it, from the side, body mass hidden. */
export function firstShowChoices(
  { draftSavedAt, revisions }: Pick<OpenedFit, 'draftSavedAt' | 'revisions'>,
  { seat, paper, language }: Pick<ShowChoices, 'seat' | 'paper' | 'language'>,
): ShowChoices {
  const earlier = draftSavedAt === null ? revisions[1] : revisions[0];
  return { seat, now: PRESENT, before: earlier?.id ?? null, view: 'side', showsMass: false, paper, language };
}
