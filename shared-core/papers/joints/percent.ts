/** '99.5 %' of a part of 1. */
export const percent = (part: number): string => `${(100 * part).toFixed(1)} %`;
