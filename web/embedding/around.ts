// Where an element is in its page, seen across shadow roots.

/** What it is in: out of a slot or a shadow root as well; null: it is the document's root. */
export function around({ assignedSlot, parentElement, parentNode }: Element): Element | null {
  return assignedSlot ?? parentElement ?? (parentNode instanceof ShadowRoot ? parentNode.host : null);
}
