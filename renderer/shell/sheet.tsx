import { useEffect, useRef, useState } from 'react';
import { LiveRegion } from '../announce/live-region.tsx';
import { say } from '../language/messages.ts';
import { useLibraryNews } from '../library/library-store.ts';
import { hrefOf, type Route, useRoute } from '../route/route.ts';
import { MenuCommands } from '../ui/menu-commands.tsx';
import { FaultBoundary } from './fault-boundary.tsx';
import { SheetHead } from './sheet-head.tsx';

/**
 * A page that is loaded at its first visit. Not by `lazy`: React shows the content of a `Suspense` at the earliest
 * 300 ms after its fallback.
 */
function lazyPage<Name extends string, Props extends object>(
  load: () => Promise<Readonly<Record<Name, (props: Props) => React.ReactNode>>>,
  name: Name,
) {
  let Loaded: ((props: Props) => React.ReactNode) | null = null;
  async function fetchPage(): Promise<void> {
    Loaded = (await load())[name];
  }
  // biome-ignore lint/correctness/noComponentHookFactories: made once for each page, as this module is read
  function LazyPage(props: Props) {
    const [, setArrived] = useState(Loaded !== null);
    useEffect(() => {
      if (Loaded) return;
      fetchPage().then(
        () => setArrived(true),
        (error: unknown) => {
          // Thrown while React renders, it reaches the boundary of faults.
          setArrived(() => {
            throw error;
          });
        },
      );
    }, []);
    return Loaded ? <Loaded {...props} /> : <main className="sheet-body" id="content" tabIndex={-1} />;
  }
  return Object.assign(LazyPage, { fetchPage });
}

const ArchivePage = lazyPage(() => import('../pages/archive/archive-page.tsx'), 'ArchivePage');
const AthletePage = lazyPage(() => import('../pages/athlete/athlete-page.tsx'), 'AthletePage');
const AthletesPage = lazyPage(() => import('../pages/athletes/athletes-page.tsx'), 'AthletesPage');
const AthletesTablePage = lazyPage(
  () => import('../pages/athletes-table/athletes-table-page.tsx'),
  'AthletesTablePage',
);
const BenchPage = lazyPage(() => import('../pages/bench/bench-page.tsx'), 'BenchPage');
const BoatPage = lazyPage(() => import('../pages/boat/boat-page.tsx'), 'BoatPage');
const BoatsPage = lazyPage(() => import('../pages/boats/boats-page.tsx'), 'BoatsPage');
const CrewSheetPage = lazyPage(() => import('../pages/crew-sheet/crew-sheet-page.tsx'), 'CrewSheetPage');
const FitsPage = lazyPage(() => import('../pages/fits/fits-page.tsx'), 'FitsPage');
const FullSizePage = lazyPage(() => import('../pages/full-size/full-size-page.tsx'), 'FullSizePage');
const HelpPage = lazyPage(() => import('../pages/help/help-page.tsx'), 'HelpPage');
const FilesPage = lazyPage(() => import('../pages/help/files-page.tsx'), 'FilesPage');
const HomePage = lazyPage(() => import('../pages/home/home-page.tsx'), 'HomePage');
const HullPage = lazyPage(() => import('../pages/hull/hull-page.tsx'), 'HullPage');
const MeasurePage = lazyPage(() => import('../pages/measure/measure-page.tsx'), 'MeasurePage');
const NewFitPage = lazyPage(() => import('../pages/new-fit/new-fit-page.tsx'), 'NewFitPage');
const PaddlesPage = lazyPage(() => import('../pages/paddles/paddles-page.tsx'), 'PaddlesPage');
const SetOutPage = lazyPage(() => import('../pages/set-out/set-out-page.tsx'), 'SetOutPage');
const PhotographPage = lazyPage(() => import('../pages/photograph/photograph-page.tsx'), 'PhotographPage');
const ShowPage = lazyPage(() => import('../pages/show/show-page.tsx'), 'ShowPage');
const TimelinePage = lazyPage(() => import('../pages/timeline/timeline-page.tsx'), 'TimelinePage');
const TransferPage = lazyPage(() => import('../pages/transfer/transfer-page.tsx'), 'TransferPage');
const TrialPage = lazyPage(() => import('../pages/trial/trial-page.tsx'), 'TrialPage');

/** Fetches a page that the program opens with, so that it can be drawn at once; an error is reported when the page is rendered, not here. */
export async function fetchFirstPage({ page }: Route): Promise<void> {
  const first = page === 'fit' ? BenchPage : page === 'home' ? HomePage : null;
  await first?.fetchPage().catch(() => {});
}

function Page({ route }: { route: Route }) {
  switch (route.page) {
    case 'home':
      return <HomePage />;
    case 'fits':
      return <FitsPage />;
    case 'new-fit':
      return <NewFitPage />;
    case 'fit':
      return <BenchPage key={route.id} fitId={route.id} />;
    case 'set-out':
      return <SetOutPage key={route.id} fitId={route.id} />;
    case 'show':
      return <ShowPage key={route.id} fitId={route.id} />;
    case 'full-size':
      return <FullSizePage key={route.id} fitId={route.id} />;
    case 'crew-sheet':
      return <CrewSheetPage key={route.id} fitId={route.id} />;
    case 'photograph':
      return <PhotographPage key={route.id} fitId={route.id} />;
    case 'trial':
      return <TrialPage key={`${route.id} ${route.trial}`} fitId={route.id} trialId={route.trial ?? null} />;
    case 'transfer':
      return <TransferPage key={route.id} fitId={route.id} />;
    case 'timeline':
      return <TimelinePage key={route.id} id={route.id} />;
    case 'athletes':
      return <AthletesPage />;
    case 'athlete':
      return <AthletePage key={route.id} id={route.id} />;
    case 'measure':
      return <MeasurePage key={route.id} id={route.id} />;
    case 'athletes-table':
      return <AthletesTablePage />;
    case 'boats':
      return <BoatsPage />;
    case 'boat':
      return <BoatPage key={route.id} id={route.id} />;
    case 'hull':
      return <HullPage key={route.id} id={route.id} />;
    case 'paddles':
      return <PaddlesPage key={route.id ?? ''} id={route.id} />;
    case 'archive':
      return <ArchivePage />;
    case 'help':
      return <HelpPage />;
    case 'help-files':
      return <FilesPage />;
  }
}

/** The whole page: head, body, and the live region. */
export function Sheet() {
  const route = useRoute();
  useLibraryNews();
  useFocusOnArrival(hrefOf(route));
  return (
    <div className="sheet">
      <button type="button" className="skip" onClick={goToContent}>
        {say('sheet.skip')}
      </button>
      {route.page !== 'show' && <SheetHead route={route} />}
      <FaultBoundary key={placeOf(route)}>
        <Page route={route} />
      </FaultBoundary>
      <MenuCommands />
      <LiveRegion />
    </div>
  );
}

/** The page and what it is of: a tab of the same bench is the same place. */
function placeOf(route: Route): string {
  return JSON.stringify(route.page === 'fit' ? { page: route.page, id: route.id } : route);
}

/** Moves the focus to the head of a new page, so that the keyboard and the screen reader continue from there. */
function useFocusOnArrival(address: string): void {
  const before = useRef(address);
  useEffect(() => {
    if (before.current === address) return;
    before.current = address;
    document.getElementById('content')?.focus({ preventScroll: true });
  }, [address]);
}

/** The address after the # is the route, so this is a button that moves the focus. */
function goToContent(): void {
  document.getElementById('content')?.focus();
}
