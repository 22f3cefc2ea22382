import { type NotePlace, notePlaces } from '../../document/note-places.ts';
import { leadersOf } from '../leaders.ts';
import type { Part } from '../scene.ts';

/** Thin lines from the margin notes to their parts, along free lanes: none crosses another view. */
export function leaderLines(pageTop: () => number): Part {
  return {
    layer: 'labels',
    paint(pen, scene) {
      if (scene.held) return;
      const notes: readonly NotePlace[] = notePlaces.getState().notes;
      const leaders = leadersOf(scene, notes, pageTop());
      const ordered = [...leaders].sort(
        (a, b) => Number(a.part === scene.lit) - Number(b.part === scene.lit),
      );
      for (const { path, part, severity } of ordered) {
        const lit = part === scene.lit;
        const colour = lit ? 'accent' : severity === 'good' ? 'ink-faint' : severity;
        pen.line(path, { stroke: colour, width: lit ? 1.4 : 0.8, alpha: lit ? 1 : 0.55 });
        pen.disc(path.at(-1)!, lit ? 3 : 2.2, { fill: colour });
      }
    },
  };
}
