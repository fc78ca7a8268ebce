import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import { asNeeded } from "../../common/boughtLength.ts";
import { hasMotif } from "../../common/join/centredMotif.ts";
import type { ItemContext } from "../../itemKind.ts";
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
  const diagnostics: Diagnostic[] = [];
  if (back.isMoreThan(front))
    diagnostics.push(
      diagnostic(
        context.place(["back-width"]),
        "back-wider-than-front",
        `At the back the seat is ${printLength(back, units)} wide, more than the ${printLength(front, units)} of its size.`,
        {
          actual: printLength(back, units),
          expected: `${printLength(front, units)} or less`,
          hint: "Write the widest measure first in size, wherever it is: the cloth is cut to it.",
        },
      ),
    );
  const thickness = fields.thickness ?? null;
  const needed = thickness ? thickness.times(2) : null;
  if (needed?.isMoreThan(wrap))
    diagnostics.push(
      diagnostic(
        context.place(["thickness"]),
        "wrap-too-small",
        `The wrap of ${printLength(wrap, units)} does not reach round a seat ${printLength(thickness ?? wrap, units)} thick and under it.`,
        {
          actual: printLength(wrap, units),
          expected: `more than ${printLength(needed, units)}`,
          hint: `Write allowances for drop-in-seat in studio.md: wrap: ${printLength(needed.plus(Length.inches(3)), units)}, or measure the thickness again.`,
        },
      ),
    );
  const motif = hasMotif(context.cloth(fields.cloth));
  const made = makeCover(
    {
      title: fields["drop-in-seat"],
      thing: "seat",
      cloth: fields.cloth,
      count: fields.count ?? 1,
      entries: [
        {
          piece: "seat",
          size: [front, depth],
          centred: fields.centred ?? (motif && fields.railroad !== true),
          added: {
            width: wrap,
            length: wrap,
            words: `${printLength(wrap, units)} wrap each way`,
          },
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
    },
    null,
    context,
  );
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
      ...(thickness
        ? []
        : ["The seat's thickness is not measured: does the wrap reach round it and under?"]),
      "Has the seat room in its rebate for this cloth, at all four sides?",
    ],
    diagnostics: [...diagnostics, ...made.diagnostics],
    front,
    back,
    depth,
    thickness,
  };
}
