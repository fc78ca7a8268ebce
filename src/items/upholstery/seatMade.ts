import type { Length } from "../../units/length.ts";
import type { CoverMade } from "./makeCover.ts";

/** What a chair, a sofa, or anything else with a seat and a back has beside its cover. */
export interface SeatMade extends CoverMade {
  readonly size: readonly [Length, Length, Length];
  readonly seatHeight: Length;
  /** Seats side by side. */
  readonly seats: number;
  /** Of a frame that shows: whether it has arms, and whether its back is upholstered. */
  readonly arms: boolean;
  readonly padBack: boolean;
}

/** What the drawings of a seat look at in its fields. */
export interface SeatFields {
  readonly type?: string | undefined;
  readonly cloth: string;
  readonly "seat-height"?: Length | undefined;
}
