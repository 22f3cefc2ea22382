/**
 * Changes an element's text by changing its text node. Replacing the node would trigger every observer of the page's
 * elements: the tabs of the margin would then search for focusable elements at every move.
 */
export function writeText(place: Element, text: string): void {
  const node = place.firstChild;
  if (node?.nodeType !== Node.TEXT_NODE || node.nextSibling) place.textContent = text;
  else if (node.nodeValue !== text) node.nodeValue = text;
}
