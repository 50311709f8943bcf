// What the text layer knows of a job's outline, so that it can cut it and tell a fault of its layout.

/** The key under which a job holds its carcasses. */
export const CARCASSES_KEY = 'carcasses';

/** The key by which a map under a carcass's name shows itself to be a carcass. */
export const KIND_KEY = 'kind';
