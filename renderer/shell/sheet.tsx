import { lazy, Suspense, useEffect, useRef } from 'react';
import { LiveRegion } from '../announce/live-region.tsx';
import { say } from '../language/messages.ts';
import { useLibraryNews } from '../library/library-state.ts';
import { hrefOf, type Route, useRoute } from '../route/route.ts';
import { MenuCommands } from '../ui/menu-commands.tsx';
import { FaultBoundary } from './fault-boundary.tsx';
import { SheetHead } from './sheet-head.tsx';

// Each page is fetched when it is first gone to.
const ArchivePage = lazy(() =>
  import('../pages/archive/archive-page.tsx').then(({ ArchivePage }) => ({ default: ArchivePage })),
);
const AthletePage = lazy(() =>
  import('../pages/athlete/athlete-page.tsx').then(({ AthletePage }) => ({ default: AthletePage })),
);
const AthletesPage = lazy(() =>
  import('../pages/athletes/athletes-page.tsx').then(({ AthletesPage }) => ({ default: AthletesPage })),
);
const AthletesTablePage = lazy(() =>
  import('../pages/athletes-table/athletes-table-page.tsx').then(({ AthletesTablePage }) => ({
    default: AthletesTablePage,
  })),
);
const BenchPage = lazy(() =>
  import('../pages/bench/bench-page.tsx').then(({ BenchPage }) => ({ default: BenchPage })),
);
const BoatPage = lazy(() =>
  import('../pages/boat/boat-page.tsx').then(({ BoatPage }) => ({ default: BoatPage })),
);
const BoatsPage = lazy(() =>
  import('../pages/boats/boats-page.tsx').then(({ BoatsPage }) => ({ default: BoatsPage })),
);
const CrewSheetPage = lazy(() =>
  import('../pages/crew-sheet/crew-sheet-page.tsx').then(({ CrewSheetPage }) => ({ default: CrewSheetPage })),
);
const FitsPage = lazy(() =>
  import('../pages/fits/fits-page.tsx').then(({ FitsPage }) => ({ default: FitsPage })),
);
const FullSizePage = lazy(() =>
  import('../pages/full-size/full-size-page.tsx').then(({ FullSizePage }) => ({ default: FullSizePage })),
);
const HelpPage = lazy(() =>
  import('../pages/help/help-page.tsx').then(({ HelpPage }) => ({ default: HelpPage })),
);
const FilesPage = lazy(() =>
  import('../pages/help/files-page.tsx').then(({ FilesPage }) => ({ default: FilesPage })),
);
const HomePage = lazy(() =>
  import('../pages/home/home-page.tsx').then(({ HomePage }) => ({ default: HomePage })),
);
const HullPage = lazy(() =>
  import('../pages/hull/hull-page.tsx').then(({ HullPage }) => ({ default: HullPage })),
);
const MeasurePage = lazy(() =>
  import('../pages/measure/measure-page.tsx').then(({ MeasurePage }) => ({ default: MeasurePage })),
);
const NewFitPage = lazy(() =>
  import('../pages/new-fit/new-fit-page.tsx').then(({ NewFitPage }) => ({ default: NewFitPage })),
);
const PaddlesPage = lazy(() =>
  import('../pages/paddles/paddles-page.tsx').then(({ PaddlesPage }) => ({ default: PaddlesPage })),
);
const SetOutPage = lazy(() =>
  import('../pages/set-out/set-out-page.tsx').then(({ SetOutPage }) => ({ default: SetOutPage })),
);
const PhotographPage = lazy(() =>
  import('../pages/photograph/photograph-page.tsx').then(({ PhotographPage }) => ({
    default: PhotographPage,
  })),
);
const ShowPage = lazy(() =>
  import('../pages/show/show-page.tsx').then(({ ShowPage }) => ({ default: ShowPage })),
);
const TimelinePage = lazy(() =>
  import('../pages/timeline/timeline-page.tsx').then(({ TimelinePage }) => ({ default: TimelinePage })),
);
const TransferPage = lazy(() =>
  import('../pages/transfer/transfer-page.tsx').then(({ TransferPage }) => ({ default: TransferPage })),
);
const TrialPage = lazy(() =>
  import('../pages/trial/trial-page.tsx').then(({ TrialPage }) => ({ default: TrialPage })),
);

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
        <Suspense fallback={<main className="sheet-body" id="content" tabIndex={-1} />}>
          <Page route={route} />
        </Suspense>
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

/** Puts the focus at the head of a page that was gone to, so that the keyboard and the screen reader go on from there. */
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
