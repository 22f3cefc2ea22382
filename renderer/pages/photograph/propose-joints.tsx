import { useEffect, useRef, useState } from 'react';
import type { Seat } from '../../../core/document/seat-schema.ts';
import type { ImageSize, Pixel } from '../../../core/photograph/camera.ts';
import { jointsFromLandmarks, type ProposedJoint } from '../../../core/photograph/joints-from-landmarks.ts';
import type { PhotoStudy } from '../../../core/photograph/photo-study-schema.ts';
import { say } from '../../language/messages.ts';
import { Button } from '../../ui/button.tsx';
import { JOINT_ORDER } from './mark-order.ts';
import { type MarkedProposal, openProposals, withProposals } from './marked-study.ts';
import { loadPoseModel } from './pose-model.ts';
import type { PictureReading } from './use-reading.ts';

type State =
  | { readonly kind: 'idle' | 'working' | 'nobody' | 'failed' }
  | { readonly kind: 'proposed'; readonly count: number };

/** Joints proposed by a pose model on this computer: marks to be looked at, each with how sure the model is. */
export function ProposeJoints(props: {
  source: string;
  study: PhotoStudy;
  seat: Seat;
  reading: PictureReading;
  onProposed: (study: PhotoStudy) => void;
}) {
  const { study, seat, reading } = props;
  const [state, setState] = useState<State>({ kind: 'idle' });
  // Marks may be set while the model works: its proposals are added to the study as it is then.
  const latest = useRef(study);
  useEffect(() => {
    latest.current = study;
  });

  async function propose(): Promise<void> {
    setState({ kind: 'working' });
    try {
      const model = await loadPoseModel();
      const landmarks = await model.landmarksOf(await loadedPicture(props.source));
      const plan = reading.kind === 'read' ? (reading.answer.plan?.points ?? null) : null;
      const joints = jointsFromLandmarks(landmarks, seat, plan)
        .filter(isMarked)
        .filter(({ pixel }) => isInside(pixel, study.image));
      if (joints.length === 0) return setState({ kind: 'nobody' });
      const open = openProposals(latest.current, joints);
      props.onProposed(withProposals(latest.current, open));
      setState({ kind: 'proposed', count: open.length });
    } catch {
      setState({ kind: 'failed' });
    }
  }

  return (
    <>
      <Button disabled={state.kind === 'working'} onClick={() => void propose()}>
        {say('photograph.propose')}
      </Button>
      <span className="soft" role="status">
        {state.kind === 'proposed'
          ? say('photograph.propose.done', { count: state.count })
          : state.kind !== 'idle' && say(`photograph.propose.${state.kind}`)}
      </span>
    </>
  );
}

const isMarked = (one: ProposedJoint): one is MarkedProposal =>
  (JOINT_ORDER as readonly string[]).includes(one.joint);

/** A pose model guesses joints outside the picture too: those cannot be looked at. */
const isInside = ({ u, v }: Pixel, { width, height }: ImageSize) =>
  u >= 0 && v >= 0 && u <= width && v <= height;

function loadedPicture(source: string): Promise<HTMLImageElement> {
  return new Promise((resolve, reject) => {
    const picture = new Image();
    picture.onload = () => resolve(picture);
    picture.onerror = () => reject(new Error('the picture does not load'));
    picture.src = source;
  });
}
