import { useEffect } from 'react';
import type { Format } from '../../../app/language/format.ts';
import { FITTING_COORDINATES } from '../../../core/document/coordinates.ts';
import { coordinateOf } from '../../../core/document/fitting-coordinate.ts';
import { announce } from '../../announce/announce.ts';
import { useDocument } from '../../bench/bench-context.tsx';
import { coordinateText } from '../../bench/change-text.ts';
import { coordinateName } from '../../bench/coordinate-name.ts';
import { useFormat } from '../../display/use-display.ts';
import type { FitState } from '../../document/fit-document.ts';
import { say, words } from '../../language/messages.ts';
import { findingTitle } from '../../language/sentences.ts';

/** A screen reader is told this long after the last change, milliseconds. */
const REST_MS = 500;

/** What changed from one state to another: measures that moved, and findings that say something else now. */
export function changeSpoken(before: FitState, after: FitState, format: Format): string {
  const seat = after.seat;
  const was = before.fit.seats[seat];
  const is = after.fit.seats[seat];
  if (!was || !is) return '';
  const moved = FITTING_COORDINATES.filter((c) => coordinateOf(was, c) !== coordinateOf(is, c)).map((c) =>
    say('spoken.moved', { what: coordinateName(c), value: coordinateText(c, coordinateOf(is, c), format) }),
  );
  const old = new Map(before.report.findings.map((finding) => [finding.id, finding.severity]));
  const turned = after.report.findings
    .filter((finding) => old.has(finding.id) && old.get(finding.id) !== finding.severity)
    .map((finding) =>
      say('spoken.now', {
        name: findingTitle(finding, format.quantity(finding.quantity)),
        severity: say(`severity.${finding.severity}`),
      }),
    );
  return words().sentences([...moved, ...turned]);
}

/** Speaks the result of a nudge, a typed number or a taken change, wherever it was made. */
export function Announcer() {
  const document = useDocument();
  const format = useFormat();
  useEffect(() => {
    let told = document.getState();
    let timer: ReturnType<typeof setTimeout> | null = null;
    const stop = document.subscribe((state) => {
      if (state.fit === told.fit) return;
      if (timer !== null) clearTimeout(timer);
      timer = setTimeout(() => {
        const now = document.getState();
        const sentence = changeSpoken(told, now, format);
        told = now;
        if (sentence) announce(sentence);
      }, REST_MS);
    });
    return () => {
      stop();
      if (timer !== null) clearTimeout(timer);
    };
  }, [document, format]);
  return null;
}
