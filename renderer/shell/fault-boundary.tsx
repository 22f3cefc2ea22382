import { Component } from 'react';
import { say } from '../language/messages.ts';
import { Button } from '../ui/button.tsx';

/** Catches an error of the page, so that it says what was saved instead of going blank. */
export class FaultBoundary extends Component<{ children: React.ReactNode }, { fault: boolean }> {
  override state = { fault: false };

  static getDerivedStateFromError() {
    return { fault: true };
  }

  override render() {
    if (!this.state.fault) return this.props.children;
    return (
      <main className="page stack" role="alert">
        <h1>{say('error.title')}</h1>
        <p>{say('error.fault', { saved: say('error.saved') })}</p>
        <p>
          <Button look="chief" onClick={() => window.location.reload()}>
            {say('error.reload')}
          </Button>
        </p>
      </main>
    );
  }
}
