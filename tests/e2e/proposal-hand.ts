import type { Page } from 'playwright-core';
import type { Fit } from '../../core/document/fit-schema.ts';
import { createEvaluator } from '../../core/evaluation/evaluator.ts';
import { propose } from '../../core/optimise/propose.ts';
import { exampleAthlete, exampleFit, exampleSeat } from '../core/example/example-fit.ts';
import { openOnBench } from './open-bench.ts';
import { callFromPage } from './screens.ts';

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
  const button = (name: string) => page().getByRole('button', { name });
  return {
    /** Puts a new fit on the bench. */
    async openFit(fit: Fit): Promise<void> {
      fitId = await openOnBench(page(), fit);
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
