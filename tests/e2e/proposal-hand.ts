import type { Page } from 'playwright-core';
import type { Fit } from '../../core/document/fit-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { propose } from '../../core/optimise/propose.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { callFromPage, goTo, measure } from './screens.ts';

export const PAD_AFT = 'Knee pad: Aft of the mark';

/** A pad too far aft, a closed front knee, and a strap that holds the foot, which no placing can better. */
export function spoilt(): Fit {
  const seat = exampleSeat();
  return exampleFit([
    {
      ...seat,
      kneePad: { ...seat.kneePad, aftM: 0.26 },
      frontFoot: { ...seat.frontFoot, forwardM: 0.24 },
      rearRest: { ...seat.rearRest, strap: 'fixed' },
    },
  ]);
}

/** The same, with a second paddler. */
export function spoiltPair(): Fit {
  const bow = spoilt().seats[0]!;
  const stern = exampleSeat({
    side: 'right',
    athlete: exampleAthlete({ name: 'Stern paddler', side: 'right', massKg: 68 }),
  });
  return exampleFit([bow, stern]);
}

/** The proposal that the core makes of the fit as it stands, from nothing. */
export const proposed = (fit: Fit) => propose(createEvaluator(), fit);

/** What a person does with a proposal on the bench of a page. */
export function proposalHand(page: () => Page) {
  let fitId: string;
  let made = 0;
  const button = (name: string) => page().getByRole('button', { name });
  return {
    /** Puts a new fit on the bench. */
    async openFit(fit: Fit): Promise<void> {
      made += 1;
      const name = `To be bettered ${made}`;
      fitId = (await callFromPage(page(), 'fits.create', { fit: { ...fit, name } })).id;
      await goTo(page(), `#/fits/${fitId}`);
      await page().getByRole('heading', { level: 1, name, exact: true }).waitFor();
      await measure(page(), PAD_AFT).waitFor();
    },
    async keptFit(): Promise<Fit> {
      await page().locator('.kept[data-keeping="kept"]').waitFor();
      return (await callFromPage(page(), 'fits.open', { id: fitId })).fit;
    },
    ask: () => button('Propose the smallest change'),
    take: () => button('Apply the proposal'),
    leave: () => button('Discard the proposal'),
    undo: () => page().getByRole('button', { name: 'Undo', exact: true }),
    moves: () => page().locator('.proposal-moves li').allTextContents(),
  };
}
