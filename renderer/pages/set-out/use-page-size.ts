import { useEffect } from 'react';

/** Sets the printer's page while the component is shown: a landscape page, and its margins in millimetres. */
export function usePageSize(paper: string, marginMm: number): void {
  useEffect(() => {
    const sheet = new CSSStyleSheet();
    // Made by script: the page's policy lets no style stand in the markup.
    sheet.replaceSync(`@page { size: ${paper.toLowerCase()} landscape; margin: ${marginMm}mm; }`);
    document.adoptedStyleSheets = [...document.adoptedStyleSheets, sheet];
    return () => {
      document.adoptedStyleSheets = document.adoptedStyleSheets.filter((other) => other !== sheet);
    };
  }, [paper, marginMm]);
}
