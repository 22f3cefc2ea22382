import type { Scene, ScenePart } from '../view/scene.ts';
import type { Leader } from './leaders.ts';

/** Thin lines from the margin notes to their parts, along free lanes: none crosses another view. */
export function leaderLines(route: (scene: Scene) => readonly Leader[]): ScenePart {
  return {
    layer: 'labels',
    paint(pen, scene) {
      if (scene.held) return;
      const ordered = route(scene).toSorted(
        (a, b) => Number(a.part === scene.lit) - Number(b.part === scene.lit),
      );
      for (const { path, part, severity } of ordered) {
        const lit = part === scene.lit;
        const colour = lit
          ? 'accent'
          : severity === 'good' || severity === 'unknown'
            ? 'ink-faint'
            : severity;
        pen.line(path, { stroke: colour, width: lit ? 1.4 : 0.8, alpha: lit ? 1 : 0.55 });
        pen.disc(path.at(-1)!, lit ? 3 : 2.2, { fill: colour });
      }
    },
  };
}
