import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import type { Fit } from '../../core/document/fit-schema.ts';
import { handlePlace, nextFrame } from './hand.ts';
import { callFromPage, goTo, soon } from './screens.ts';

/** The measure that most tests of the drawing read. */
export const PAD_AFT = 'Knee pad: Aft of the mark';

let made = 0;

/** The bench on one page, opened with a `clock`: its drawing, pulled by the pointer. */
export class DrawnBench {
  readonly page: Page;
  /** What the page complained of since it was opened. */
  readonly complaints: string[] = [];
  private fitId = '';

  constructor(page: Page) {
    this.page = page;
    page.on('pageerror', (error) => this.complaints.push(error.message));
    page.on('console', (message) => {
      if (message.type() === 'error') this.complaints.push(message.text());
    });
  }

  /** Puts a fit on the bench, with no steps to undo yet. */
  async put(fit: Fit): Promise<void> {
    made += 1;
    const name = `Drawn ${made}`;
    this.fitId = (await callFromPage(this.page, 'fits.create', { fit: { ...fit, name } })).id;
    await goTo(this.page, `#/fits/${this.fitId}`);
    await this.page.locator('[data-grip="kneePad/plan"][data-x]').waitFor({ state: 'attached' });
    await this.page.getByText(name).first().waitFor();
    await nextFrame(this.page);
  }

  /** Takes a handle and pulls it by so many pixels, in so many moves, without letting go. */
  async pull(grip: string, by: { x: number; y: number }, moves = 8): Promise<void> {
    const { mouse } = this.page;
    const { x, y } = await handlePlace(this.page, grip);
    await mouse.move(x, y);
    await mouse.down();
    for (let k = 1; k <= moves; k++) await mouse.move(x + (by.x * k) / moves, y + (by.y * k) / moves);
    await nextFrame(this.page);
  }

  async undo(): Promise<void> {
    await this.undoButton().click();
    await nextFrame(this.page);
  }

  /** Waits until there is nothing to undo. */
  async nothingToUndo(why = 'undo is off'): Promise<void> {
    await soon(async () => ((await this.undoIsOff()) ? why : '')).toBe(why);
  }

  async undoIsOff(): Promise<boolean> {
    const button = this.undoButton();
    return (await button.isDisabled()) || (await button.getAttribute('aria-disabled')) === 'true';
  }

  /** The fit on the disk once everything has been kept. */
  async kept(): Promise<Fit> {
    await this.page.locator('.kept[data-keeping="kept"]').waitFor();
    return (await callFromPage(this.page, 'fits.open', { id: this.fitId })).fit;
  }

  private undoButton() {
    return this.page.getByRole('button', { name: /^Undo/ });
  }
}

/** What the drawing moves in a boat of one. */
export function fittings({ seats }: Fit) {
  expect(seats).toHaveLength(1);
  const [seat] = seats;
  return {
    kneePad: seat!.kneePad,
    rearRest: seat!.rearRest,
    frontFoot: seat!.frontFoot,
    paddle: seat!.paddle,
  };
}
