import { useState } from 'react';
import { useFormat } from '../../../display/use-display.ts';
import { say, words } from '../../../language/messages.ts';
import { hrefOf } from '../../../route/route.ts';
import { Button } from '../../../ui/button.tsx';
import type { Grown } from '../../use-grown.ts';
import { bannerText } from './difference-text.ts';

/** Says at the head of the bench that a body has outgrown the fit; if ignored, it is shown again when the fit is opened again. */
export function GrowthBanner({ fitId, grown }: { fitId: string; grown: readonly Grown[] }) {
  const format = useFormat();
  const [left, setLeft] = useState(false);
  if (left || grown.length === 0) return null;
  return (
    <div className="bench-banner" role="status">
      <p>{words().sentences(grown.map((one) => bannerText(one, format)))}</p>
      <a className="button" href={hrefOf({ page: 'fit', id: fitId, tab: 'growth' })}>
        {say('week.see')}
      </a>
      <Button look="bare" onClick={() => setLeft(true)}>
        {say('growth.banner.not-now')}
      </Button>
    </div>
  );
}
