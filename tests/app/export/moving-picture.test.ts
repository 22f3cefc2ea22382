import { describe, expect, it } from 'vitest';
import { movingPicture } from '../../../app/export/moving-picture.ts';
import { DEFAULT_RATE_PER_MIN } from '../../../core/document/stroke-defaults.ts';
import { SHOW_VIEWS } from '../../../core/show/show-picture.ts';
import { inventedFit } from '../../core/setout/invented-set-out.ts';
import { english } from '../../english.ts';
import { notEmpty } from '../../not-empty.ts';

const fit = inventedFit();
const words = english;
const picture = movingPicture(fit, { index: 0, view: 'side', words })!;
const frames = [...picture.matchAll(/<g class="f" style="animation-delay:([\d.]+)s">(.*?)<\/g>/gs)];

describe('a stroke as a picture that moves by itself', () => {
  it('has its pictures one after another, evenly through one stroke at the athlete’s rate', () => {
    const period = 60 / (fit.seats[0]!.stroke.ratePerMin ?? DEFAULT_RATE_PER_MIN);
    expect(frames.length).toBeGreaterThanOrEqual(20);
    for (const [k, [, delay]] of notEmpty([...frames.entries()])) {
      expect(Number(delay)).toBeCloseTo((period * k) / frames.length, 2);
    }
    expect(picture).toContain(`animation:f ${period.toFixed(3)}s step-end infinite`);
  });

  it('moves: the catch is another picture than ready, and each is drawn of areas and lines', () => {
    expect(new Set(frames.map(([, , drawn]) => drawn)).size).toBe(frames.length);
    for (const [, , drawn] of notEmpty(frames))
      expect(drawn!.match(/<path d="M/g)!.length).toBeGreaterThan(20);
  });

  it('stands still where less motion is asked for, and on paper: ready alone is seen', () => {
    expect(picture).toContain('@media (prefers-reduced-motion:reduce),print{.f{animation:none}}');
    expect(picture).toContain('.f{visibility:hidden');
    expect(picture).toContain('.f:first-of-type{visibility:visible}');
  });

  it('runs nothing and fetches nothing, and is small enough to be sent', () => {
    expect(picture).not.toMatch(/<script|href|url\(|<image|foreignObject|on[a-z]+=/i);
    expect(picture.length).toBeLessThan(1_000_000);
  });

  it('writes a name as text, whatever letters it has', () => {
    const [seat] = fit.seats;
    const athlete = { ...seat!.athlete!, name: 'A <b> & "c"' };
    const named = movingPicture(
      { ...fit, seats: [{ ...seat!, athlete }] },
      { index: 0, view: 'above', words },
    )!;
    expect(named).toContain('<title>A &lt;b&gt; &amp; &quot;c&quot;, ');
  });

  it.each(SHOW_VIEWS)('has numbers only, from the %s', (view) => {
    expect(movingPicture(fit, { index: 0, view, words })).not.toMatch(/NaN|Infinity|undefined/);
  });

  it('is null where nobody kneels', () => {
    const [seat] = fit.seats;
    const empty = { ...fit, seats: [{ ...seat!, athlete: null }] };
    expect(movingPicture(empty, { index: 0, view: 'side', words })).toBeNull();
  });
});
