import type { Report } from '../../../core/evaluation/report.ts';
import { say } from '../../language/messages.ts';
import { type Picture, projectorOf, type Scene, type ScenePart } from '../view/scene.ts';
import { phasePicture } from '../view/stroke-pictures.ts';
import { outlinePart } from './ghost.ts';

/** The figure at the catch or at the exit as a dashed outline, named at its head, while the stroke's tab asks for it. */
export function strokeOutline(phase: 'catch' | 'exit'): ScenePart {
  let kept: { seat: Report['seats'][number] | null; picture: Picture } | null = null;
  const pick = (scene: Scene): Picture | null => {
    const { picture, seat } = scene;
    if (!scene.stroke.outlines || !picture.report.seats[seat]) return null;
    const stance = picture.report.seats[seat].stances[phase];
    if (kept?.seat?.stances[phase] !== stance)
      kept = { seat: picture.report.seats[seat], picture: phasePicture(picture, phase) };
    return kept.picture;
  };
  const outline = outlinePart(pick, { fittings: false });
  return {
    layer: outline.layer,
    paint(pen, scene) {
      outline.paint(pen, scene);
      const head = pick(scene)?.report.seats[scene.seat]?.stances.ready.points.headTop;
      if (!head) return;
      pen.within(scene.layout.windows.profile, () => {
        const { x, y } = projectorOf(scene, 'profile')(head);
        pen.text(
          say(`stroke.${phase}`),
          { x, y: y - 7 },
          { lettering: 'note', colour: 'ink-soft', align: 'center', rim: 'paper' },
        );
      });
    },
  };
}
