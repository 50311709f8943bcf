/** Builds an element; an attribute that is null or false is left out, one that is true stands without a value. */
export function h<K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string | boolean | null>> = {},
  ...children: readonly (Node | string)[]
): HTMLElementTagNameMap[K] {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== false) element.setAttribute(name, value === true ? '' : value);
  }
  element.append(...children);
  return element;
}

/** Sets an attribute only where it differs: a browser lays a drawing out anew whenever its frame is set, to the same or not. */
export function set(element: Element, name: string, value: string): void {
  if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

/** Sets the text only where it differs, so that a screen reader does not hear the same words twice. */
export function say(element: Element, words: string): void {
  if (element.textContent !== words) element.textContent = words;
}

/** The same, which shows nothing where there are no words. */
export function show(element: HTMLElement, words: string): void {
  say(element, words);
  element.hidden = words === '';
}

/** Builds an element of a drawing. */
export function svg<K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Readonly<Record<string, string>> = {},
  ...children: readonly Node[]
): SVGElementTagNameMap[K] {
  const element = document.createElementNS('http://www.w3.org/2000/svg', tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...children);
  return element;
}

/**
 * A small picture beside words that say the same, so that a reader who listens does not hear of it.
 * @param box the corner that its coordinates count from, and how many of them its sides are long: pixels of the page
 */
export function icon(
  box: { readonly from: number; readonly size: number },
  ...children: readonly Node[]
): SVGSVGElement {
  const size = String(box.size);
  const viewBox = `${box.from} ${box.from} ${size} ${size}`;
  return svg('svg', { viewBox, width: size, height: size, 'aria-hidden': 'true' }, ...children);
}
