import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { FittingContext, FittingLine } from "../itemDrawing.ts";
import type { BlindSize } from "./blindSize.ts";
import {
  acrossLines,
  acrossOf,
  comesLines,
  fixingChecks,
  footOf,
  hemLine,
  markOf,
  mountLine,
  openingLines,
  overOpening,
} from "./fittingWords.ts";
import { filledGroups, linesOf } from "./sheetWords.ts";

/** A blind with the words in which its kind speaks of it. */
export interface FittedBlind {
  readonly size: BlindSize;
  readonly isMountSaid: boolean;
  /** What is fixed: how the group is called, how long it is, and what is said of it behind its height. */
  readonly rail: {
    readonly heading: string;
    readonly long: string;
    readonly more: readonly string[];
  };
  /** What hangs from it, and what is said of that behind its hem. */
  readonly hangs: { readonly what: string; readonly more: string };
  readonly control: {
    readonly words: string;
    /** What works it at one side, as it is asked about; null where it has no side. */
    readonly sided: string | null;
    readonly side: "left" | "right" | undefined;
    readonly isLooped: boolean;
    readonly isMotor: boolean;
    readonly more: readonly string[];
  };
  readonly hardware: Parameters<typeof comesLines>[0];
  /** Said where nothing is on the order for it. */
  readonly none: string;
  /** What is tried once it hangs, and what else is looked at. */
  readonly tried: string;
  readonly looked: readonly string[];
}

/** What the fitter of a blind reads: its rail in or before the opening, what hangs from it, its control with its caution. */
export function blindFittingLine(blind: FittedBlind, context: FittingContext): FittingLine {
  const { size, rail, hangs, control } = blind;
  const p = (length: Length) => printLength(length, context.units);
  const across = acrossOf(size.width, context);
  const foot = footOf(size.hemHeight, context);
  const head = foot?.plus(size.drop) ?? null;
  const at = control.side ? `, at the ${control.side}, seen from the room` : ", its side not said";
  return {
    groups: filledGroups([
      {
        heading: "Opening",
        lines: linesOf([...openingLines(context), mountLine(size.inside, context)]),
      },
      {
        heading: rail.heading,
        lines: linesOf([
          rail.long,
          ...acrossLines(across, context),
          head && `Its head ${p(head)} above the floor${overOpening(head, context)}.`,
          ...rail.more,
        ]),
      },
      {
        heading: "What hangs",
        lines: linesOf([hangs.what, foot && hemLine(foot, context), hangs.more]),
      },
      {
        heading: "Control",
        lines: linesOf([
          `${control.words}${control.sided === null ? "" : at}.`,
          control.isLooped &&
            "Held fast to the wall with the safety device that comes with it: no free loop, out of a child's reach.",
          control.isMotor && "Wiring by a licensed electrician, as local codes ask.",
          ...control.more,
        ]),
      },
      { heading: "Comes with it", lines: comesLines(blind.hardware, blind.none) },
    ]),
    checks: [
      ...fixingChecks("head", context),
      { text: blind.tried, blank: null },
      ...(control.isLooped
        ? [{ text: "Safety device fitted, tried; its leaflet left with the client", blank: null }]
        : []),
      ...blind.looked.map((text) => ({ text, blank: null })),
    ],
    questions: linesOf([
      context.window !== null &&
        !blind.isMountSaid &&
        `Inside or outside the recess is not said: ${size.inside ? "inside" : "outside"} is assumed.`,
      head === null && "How high above the floor is its head?",
      control.sided !== null &&
        !control.side &&
        `At which side is the ${control.sided}: left or right?`,
      across === null && "Where on the wall is it?",
    ]),
    mark: markOf("board", head, across),
  };
}
