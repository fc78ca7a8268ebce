import type { Length } from "../../units/length.ts";

/** One curtain, joined and hemmed at its sides, before and after its heading. */
export interface Panel {
  /** Flat, after the side hems. */
  readonly flat: Length;
  /** As it hangs closed: front, return(s) and overlap. */
  readonly finished: Length;
  /** What of it is seen from the front between the return and the overlap. */
  readonly face: Length;
}
