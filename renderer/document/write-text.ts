/**
 * Changes what an element says by changing its text node. Replacing the node instead would wake whatever watches the
 * page's elements: the leaves of the margin then look for what can be focused, at every move of the hand.
 */
export function writeText(place: Element, text: string): void {
  const node = place.firstChild;
  if (node?.nodeType !== Node.TEXT_NODE || node.nextSibling) place.textContent = text;
  else if (node.nodeValue !== text) node.nodeValue = text;
}
