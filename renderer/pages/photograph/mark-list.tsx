import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { useFormat } from '../../display/use-display.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { MARK_ORDER, type PhotoMarkName } from './mark-order.ts';
import { markName } from './mark-words.ts';
import { markOf, proposedShare } from './marked-study.ts';
import type { PictureReading } from './use-reading.ts';

/** Every mark in the guided order: set or not, how far it lies off, and which is in hand. */
export function MarkList(props: {
  study: PhotoStudy;
  reading: PictureReading;
  inHand: PhotoMarkName;
  bad: ReadonlySet<string>;
  onTake: (name: PhotoMarkName) => void;
  onRemove: (name: PhotoMarkName) => void;
  /** A proposed joint is right where it is; without a name all of them are. */
  onConfirm: (name?: PhotoMarkName) => void;
}) {
  const groups = [
    { title: say('photograph.points.boat'), about: say('photograph.points.boat.about'), kind: 'boat.' },
    { title: say('photograph.points.joints'), about: say('photograph.points.joints.about'), kind: 'joint.' },
    { title: say('trial.water'), about: say('photograph.points.water.about'), kind: 'water.' },
  ];
  const proposals = Object.keys(props.study.proposed).length;
  return (
    <div className="photograph-marks">
      {groups.map(({ title, about, kind }) => (
        <section key={kind}>
          <h3>{title}</h3>
          <p className="soft">{about}</p>
          {kind === 'joint.' && proposals > 0 && (
            <Button onClick={() => props.onConfirm()}>
              {say('photograph.confirm.all', { count: proposals })}
            </Button>
          )}
          <ul>
            {MARK_ORDER.filter((name) => name.startsWith(kind)).map((name) => (
              <Entry key={name} {...props} name={name} />
            ))}
          </ul>
        </section>
      ))}
    </div>
  );
}

function Entry(props: Parameters<typeof MarkList>[0] & { name: PhotoMarkName }) {
  const { name, study, inHand, bad } = props;
  const set = markOf(study, name) !== undefined;
  const off = useOff(props.reading, name);
  const share = proposedShare(study, name);
  const format = useFormat();
  return (
    <li className={bad.has(name) ? 'bad' : undefined}>
      <Button look="words" className="mark" aria-pressed={name === inHand} onClick={() => props.onTake(name)}>
        {markName(name)}
      </Button>
      <span className="soft">{bad.has(name) ? say('photograph.bad', { off }) : set ? off : ''}</span>
      {share !== undefined && (
        <Button
          look="words"
          className="mark confirm"
          aria-label={say('photograph.confirm', { mark: markName(name) })}
          onClick={() => props.onConfirm(name)}
        >
          {say('photograph.confirm.share', { share: format.number(100 * share, { decimals: 0 }) })}
        </Button>
      )}
      {set && (
        <Button
          look="bare"
          className="remove"
          aria-label={say('photograph.remove', { mark: markName(name) })}
          onClick={() => props.onRemove(name)}
        >
          ×
        </Button>
      )}
    </li>
  );
}

/** How far a mark lies off, pixels and millimetres, in words; empty while it is not known. */
function useOff(reading: PictureReading, name: PhotoMarkName): string {
  const format = useFormat();
  if (reading.kind !== 'read') return '';
  const { camera, points, posture } = reading.answer;
  const [kind, own] = name.split('.');
  const found =
    kind === 'boat'
      ? camera.kind === 'solved' && camera.residuals.find(({ index }) => points[index] === own)
      : posture?.kind === 'measured' && posture.marks.find(({ view, joint }) => view === 0 && joint === own);
  if (!found) return '';
  return say('photograph.off', {
    px: format.number(found.px, { decimals: 0 }),
    mm: format.number(found.mm, { decimals: 0 }),
  });
}
