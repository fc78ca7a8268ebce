import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import { asNeeded } from "../../common/boughtLength.ts";
import type { ItemContext } from "../../itemKind.ts";
import { joinQuestion, withJoins } from "../derived.ts";
import { FIXED_RANGES } from "../estimate.ts";
import { writtenJob } from "../job.ts";
import { type CoverMade, makeCover } from "../makeCover.ts";
import { listedEntries } from "../schemaParts.ts";
import { sized } from "../seatMaterials.ts";
import { ottomanEntries, sideHeight, topEdge } from "./entries.ts";
import type { OttomanFields } from "./schema.ts";

export interface OttomanMade extends CoverMade {
  readonly size: readonly [Length, Length, Length];
  /** Height of the covered sides. */
  readonly sideHeight: Length;
  readonly round: boolean;
}

/**
 * Cloth for `count` like ottomans: its own list of pieces, else those that follow from its size; where the size is only about, a
 * range, as an estimate and without cuts. Exact lengths.
 */
export function makeOttoman(fields: OttomanFields, context: ItemContext): OttomanMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const diagnostics: Diagnostic[] = [];
  const size = fields.size as [Length, Length, Length];
  const [width, depth, height] = size;
  const round = fields.shape === "round";
  const high = sideHeight(fields);
  if (high.compare(height.minus(height)) <= 0)
    diagnostics.push(
      diagnostic(
        context.place(["legs"]),
        "legs-too-high",
        `Legs of ${p(fields.legs ?? height)} leave nothing of its ${p(height)} to cover.`,
        {
          actual: p(fields.legs ?? height),
          expected: `less than ${p(height)}`,
          hint: "Write the height of the legs below the cloth, and the whole height last in size.",
        },
      ),
    );
  if (round && !width.equals(depth))
    diagnostics.push(
      diagnostic(
        context.place(["size"]),
        "round-not-round",
        `A round ottoman is as deep as it is wide; this one is ${p(width)} by ${p(depth)}.`,
        {
          actual: p(depth),
          expected: p(width),
          hint: "Write its diameter twice, or take shape: round out.",
        },
      ),
    );
  const listed = listedEntries(fields.pieces);
  const rough = fields.measured === false && listed.length === 0;
  const faulty = diagnostics.length > 0;
  const derived =
    rough || faulty || listed.length > 0
      ? { entries: listed, assumed: false }
      : withJoins(
          ottomanEntries(fields, context),
          fields.join,
          round ? "one-side" : "both-sides",
          fields.cloth,
          fields.railroad === true,
          context,
        );
  const lap = fields.welt && !rough ? context.length("welt-lap") : null;
  const made = makeCover(
    {
      ...writtenJob(fields),
      title: fields.ottoman,
      thing: "ottoman",
      entries: derived.entries,
      loose: false,
      weltLength: fields["welt-length"] ?? (lap ? topEdge(fields).plus(lap) : null),
    },
    rough ? { range: FIXED_RANGES.ottoman, what: "an ottoman", short: "ottoman" } : null,
    context,
  );
  return {
    ...made,
    materials: [
      ...made.materials,
      ...(rough
        ? []
        : [
            sized("foam or stuffing for the top", made.count, [width, depth], units),
            sized("bottom cloth (dust cover)", made.count, [width, depth], units),
            asNeeded("webbing, wadding, calico, tacks as the frame needs"),
          ]),
    ],
    questions: [
      ...made.questions,
      ...(fields.legs === undefined && !rough
        ? ["The height of its legs is not said: the sides are taken to the floor."]
        : []),
      ...(derived.assumed ? [joinQuestion(round ? "one-side" : "both-sides")] : []),
    ],
    diagnostics: [...diagnostics, ...made.diagnostics],
    size,
    sideHeight: high,
    round,
  };
}
