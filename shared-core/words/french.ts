/** As French is composed: a space that holds before double signs and inside quotation marks. */
export const composed = (text: string): string => text.replace(/ (?=[:;?!»])/g, '\u00a0').replaceAll('« ', '«\u00a0');
