import { useEffect, useRef } from 'react';
import { LiveRegion } from '../announce/live-region.tsx';
import { say } from '../language/messages.ts';
import { ArchivePage } from '../pages/archive/archive-page.tsx';
import { AthletePage } from '../pages/athlete/athlete-page.tsx';
import { AthletesPage } from '../pages/athletes/athletes-page.tsx';
import { AthletesTablePage } from '../pages/athletes-table/athletes-table-page.tsx';
import { BenchPage } from '../pages/bench/bench-page.tsx';
import { BoatPage } from '../pages/boat/boat-page.tsx';
import { BoatsPage } from '../pages/boats/boats-page.tsx';
import { CrewSheetPage } from '../pages/crew-sheet/crew-sheet-page.tsx';
import { FitsPage } from '../pages/fits/fits-page.tsx';
import { FullSizePage } from '../pages/full-size/full-size-page.tsx';
import { HelpPage } from '../pages/help/help-page.tsx';
import { HomePage } from '../pages/home/home-page.tsx';
import { HullPage } from '../pages/hull/hull-page.tsx';
import { MeasurePage } from '../pages/measure/measure-page.tsx';
import { NewFitPage } from '../pages/new-fit/new-fit-page.tsx';
import { PaddlesPage } from '../pages/paddles/paddles-page.tsx';
import { SetOutPage } from '../pages/set-out/set-out-page.tsx';
import { ShowPage } from '../pages/show/show-page.tsx';
import { TimelinePage } from '../pages/timeline/timeline-page.tsx';
import { TransferPage } from '../pages/transfer/transfer-page.tsx';
import { TrialPage } from '../pages/trial/trial-page.tsx';
import { hrefOf, type Route, useRoute } from '../route/route.ts';
import { MenuCommands } from '../ui/menu-commands.tsx';
import { FaultBoundary } from './fault-boundary.tsx';
import { SheetHead } from './sheet-head.tsx';

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
  }
}

/** The whole page: head, body, and the live region. */
export function Sheet() {
  const route = useRoute();
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

/** The page and what it is of: a leaf of the same bench is the same place. */
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
