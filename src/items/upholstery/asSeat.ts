import type { Diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Length } from "../../units/length.ts";
import type { ItemContext } from "../itemKind.ts";
import type { CoverMade } from "./makeCover.ts";
import type { SeatMade } from "./seatMade.ts";
import { seatMaterials } from "./seatMaterials.ts";

/** What one kind of seat says beside its cover. */
export interface SeatAsk {
  readonly size: readonly [Length, Length, Length];
  /** As written; the allowance seat-height where it is not. */
  readonly seatHeight: Length | undefined;
  /** Whether its frame's own materials are asked for: not for a loose cover, and not before it is measured. */
  readonly materials: boolean;
  /** The kind's own questions, before the one about its height. */
  readonly questions: readonly string[];
  /** The kind's own faults, before those of its cover. */
  readonly diagnostics: readonly Diagnostic[];
  readonly seats: number;
  readonly arms: boolean;
  readonly padBack: boolean;
}

/** A cover made into a chair, a sofa, or anything else with a seat and a back: materials of its frame, height, what is asked. */
export function asSeat(made: CoverMade, ask: SeatAsk, context: ItemContext): SeatMade {
  const { size, seatHeight, seats, arms, padBack } = ask;
  return {
    ...made,
    materials: [
      ...made.materials,
      ...(ask.materials
        ? seatMaterials(
            made.pieces,
            [size[0], size[1]],
            made.count,
            context.length("seam").times(2),
            context.units,
          )
        : []),
    ],
    questions: [
      ...made.questions,
      ...ask.questions,
      ...(seatHeight === undefined
        ? ["The seat's height is not measured; it is drawn at the usual height."]
        : []),
    ],
    diagnostics: [...ask.diagnostics, ...made.diagnostics],
    size,
    seats,
    arms,
    padBack,
    seatHeight: seatHeight ?? context.length("seat-height"),
  };
}
