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

/** Sets the text only where it differs, so that a screen reader does not hear the same words twice. */
export function say(element: Element, words: string): void {
  if (element.textContent !== words) element.textContent = words;
}
