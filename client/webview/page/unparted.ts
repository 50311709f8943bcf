/** A figure with its fraction and its unit is read as one: ‘2 1/8’ and ‘16 mm’ are not parted by the end of a line. */
export const unparted = (text: string): string =>
  text.replace(/(?<=\d) (?=\d+\/\d|(?:mm|in|kg)(?![\p{L}\d]))/gu, '\u00a0');
