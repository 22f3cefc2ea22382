import { useEffect } from 'react';
import type { Finding, Severity } from '../../../../core/evaluation/finding.ts';
import type { NotePlace } from '../../../document/bench-view.ts';
import { useBenchView } from '../../bench-context.tsx';

function placesIn(list: HTMLElement): NotePlace[] {
  const frame = (list.closest('.tab-scroll') ?? list).getBoundingClientRect();
  // Under the drawing no line can lead to it from the right.
  if (frame.left < window.innerWidth / 3) return [];
  return [...list.querySelectorAll<HTMLElement>('.note[data-finding]')].flatMap((note): NotePlace[] => {
    const mark = note.querySelector('.severity-mark')?.getBoundingClientRect();
    if (!mark) return [];
    const clientY = mark.top + mark.height / 2;
    if (clientY < frame.top || clientY > frame.bottom) return [];
    const { finding, part, severity } = note.dataset;
    return [{ findingId: finding!, part: part as Finding['part'], severity: severity as Severity, clientY }];
  });
}

/** Keeps `notePlaces` true to a list of notes, as it is drawn, scrolled and resized. */
export function useNotePlaces(list: React.RefObject<HTMLElement | null>, drawnFor: unknown): void {
  const { notePlaces } = useBenchView();
  // biome-ignore lint/correctness/useExhaustiveDependencies: new findings stand in new places
  useEffect(() => {
    const element = list.current;
    const scroller = element?.closest('.tab-scroll');
    if (!element || !scroller) return;
    let frame = 0;
    const read = () => {
      cancelAnimationFrame(frame);
      frame = requestAnimationFrame(() => notePlaces.setState({ notes: placesIn(element) }));
    };
    const sizes = new ResizeObserver(read);
    sizes.observe(element);
    sizes.observe(scroller);
    scroller.addEventListener('scroll', read, { passive: true });
    window.addEventListener('resize', read);
    read();
    return () => {
      cancelAnimationFrame(frame);
      sizes.disconnect();
      scroller.removeEventListener('scroll', read);
      window.removeEventListener('resize', read);
      notePlaces.setState({ notes: [] });
    };
  }, [list, drawnFor, notePlaces]);
}
