import type { NoHull } from '../../core/hull/no-hull.ts';
import { say, sayMessage } from './messages.ts';

/** Why no hull can be drawn. */
export function whyNot({ reason, station }: NoHull): string {
  const what = sayMessage(reason);
  return station === null
    ? what
    : say('sheet.labelled', { label: say('boat.station', { number: station + 1 }), text: what });
}
