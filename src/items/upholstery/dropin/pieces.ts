import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import { asNeeded } from "../../common/boughtLength.ts";
import { hasMotif } from "../../common/join/centredMotif.ts";
import type { ItemContext } from "../../itemKind.ts";
import type { CoverJob } from "../job.ts";
import { type CoverMade, makeCover } from "../makeCover.ts";
import { sized } from "../seatMaterials.ts";
import type { DropInFields } from "./schema.ts";

export interface DropInMade extends CoverMade {
  readonly front: Length;
  readonly back: Length;
  readonly depth: Length;
  readonly thickness: Length | null;
}

/** Cloth for `count` like drop-in seats: width and depth, each with the wrap added. Exact lengths. */
export function makeDropIn(fields: DropInFields, context: ItemContext): DropInMade {
  const { units } = context;
  const [front, depth] = fields.size as [Length, Length];
  const back = fields["back-width"] ?? front;
  const wrap = context.length("wrap");
  const faults = [
    ...backFaults(front, back, context),
    ...wrapFaults(fields.thickness, wrap, context),
  ];
  const made = makeCover(seatJob(fields, wrap, context), null, context);
  const seats = made.count;
  return {
    ...made,
    materials: [
      ...made.materials,
      sized("wadding", seats, [front, depth], units),
      sized("calico under the cover", seats, [front.plus(wrap), depth.plus(wrap)], units),
      sized("bottom cloth (dust cover)", seats, [front, depth], units),
      asNeeded("webbing, stuffing or foam, tacks or staples as the frame needs"),
    ],
    questions: [
      ...made.questions,
      ...(fields.thickness
        ? []
        : ["The seat's thickness is not measured: does the wrap reach round it and under?"]),
      "Has the seat room in its rebate for this cloth, at all four sides?",
    ],
    diagnostics: [...faults, ...made.diagnostics],
    front,
    back,
    depth,
    thickness: fields.thickness ?? null,
  };
}

/** One piece, the seat, with the wrap added each way. */
function seatJob(fields: DropInFields, wrap: Length, context: ItemContext): CoverJob {
  const motif = hasMotif(context.cloth(fields.cloth));
  const words = `${printLength(wrap, context.units)} wrap each way`;
  return {
    title: fields["drop-in-seat"],
    thing: "seat",
    cloth: fields.cloth,
    count: fields.count ?? 1,
    entries: [
      {
        piece: "seat",
        size: fields.size as [Length, Length],
        centred: fields.centred ?? (motif && fields.railroad !== true),
        added: { width: wrap, length: wrap, words },
        keyPath: [],
        sizeKey: "size",
      },
    ],
    railroad: fields.railroad === true,
    loose: false,
    welt: null,
    weltLength: null,
    weltCut: "bias",
    buttons: 0,
  };
}

/** A seat that is wider at its back than its size says. */
function backFaults(front: Length, back: Length, context: ItemContext): Diagnostic[] {
  if (!back.isMoreThan(front)) return [];
  const p = (l: Length) => printLength(l, context.units);
  return [
    diagnostic(
      context.place(["back-width"]),
      "back-wider-than-front",
      `At the back the seat is ${p(back)} wide, more than the ${p(front)} of its size.`,
      {
        actual: p(back),
        expected: `${p(front)} or less`,
        hint: "Write the widest measure first in size, wherever it is: the cloth is cut to it.",
      },
    ),
  ];
}

/** A wrap that does not reach round the seat's thickness at both edges and under it. */
function wrapFaults(
  thickness: Length | undefined,
  wrap: Length,
  context: ItemContext,
): Diagnostic[] {
  const needed = thickness?.times(2);
  if (!thickness || !needed?.isMoreThan(wrap)) return [];
  const p = (l: Length) => printLength(l, context.units);
  return [
    diagnostic(
      context.place(["thickness"]),
      "wrap-too-small",
      `The wrap of ${p(wrap)} does not reach round a seat ${p(thickness)} thick and under it.`,
      {
        actual: p(wrap),
        expected: `more than ${p(needed)}`,
        hint: `Write allowances for drop-in-seat in studio.md: wrap: ${p(needed.plus(Length.inches(3)))}, or measure the thickness again.`,
      },
    ),
  ];
}
