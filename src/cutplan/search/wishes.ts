/** How the best of several places is chosen. */
export const LOWEST_TOP = 0;
export const LOWEST_FOOT = 1;
export const TIGHTEST = 2;

/** What a plan may ask of one piece besides its turn in the order; bits of one number, the mode above them. */
export const RIGHTWARD = 1;
export const UPWARD = 2;
export const NEW_BAND = 4;
export const MODE_SHIFT = 3;
