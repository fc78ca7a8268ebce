import { type Diagnostic, diagnostic } from "../../../diagnostics/diagnostic.ts";
import { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import { asNeeded } from "../../common/boughtLength.ts";
import type { ItemContext } from "../../itemKind.ts";
import { joinQuestion, withJoins } from "../derived.ts";
import { FIXED_RANGES } from "../estimate.ts";
import { writtenJob } from "../job.ts";
import { type CoverMade, makeCover } from "../makeCover.ts";
import { sized } from "../seatMaterials.ts";
import { headboardEntries, weltRun } from "./entries.ts";
import type { HeadboardFields } from "./schema.ts";

export interface HeadboardMade extends CoverMade {
  readonly size: readonly [Length, Length, Length];
  readonly border: Length | null;
  /** How far an arched head rises above its ends; zero of a straight one. */
  readonly rise: Length;
  /** Cloth over finished width on the face: more than one under deep buttons. For drawing the joins. */
  readonly takeUp: number;
}

/**
 * Cloth for `count` like headboards from their size; where that is only about, a range, as an estimate and without cuts. A face wider
 * than its cloth has a whole width in the middle, never a join there. Exact lengths.
 */
export function makeHeadboard(fields: HeadboardFields, context: ItemContext): HeadboardMade {
  const { units } = context;
  const p = (l: Length) => printLength(l, units);
  const size = fields.size as [Length, Length, Length];
  const [width, depth, height] = size;
  const diagnostics: Diagnostic[] = [];
  const border = fields.border ?? null;
  const most = Length.min(width.dividedBy(2), height);
  if (border && border.compare(most) >= 0)
    diagnostics.push(
      diagnostic(
        context.place(["border"]),
        "border-too-wide",
        `Borders of ${p(border)} leave no panel on a headboard ${p(width)} wide and ${p(height)} high.`,
        {
          actual: p(border),
          expected: `less than ${p(most)}`,
          hint: 'Write the width of the border alone, for example border: 4".',
        },
      ),
    );
  if (fields["border-cloth"] && !border)
    diagnostics.push(
      diagnostic(
        context.place(["border-cloth"]),
        "border-not-measured",
        "A border's cloth is named and no width of a border.",
        { hint: `Write border: 4", or take border-cloth out.` },
      ),
    );
  const rise = fields.shape === "arched" ? (fields.rise ?? Length.zero) : Length.zero;
  if (fields.shape === "arched" && (rise.isZero() || rise.compare(height) >= 0))
    diagnostics.push(
      diagnostic(
        context.place([fields.rise ? "rise" : "shape"]),
        "arch-not-measured",
        fields.rise
          ? `A rise of ${p(rise)} is no less than the whole height of ${p(height)}.`
          : "An arched head needs its rise, and none is written.",
        {
          expected: `rise, less than ${p(height)}`,
          hint: `Write how far the middle of the head stands above its ends, for example rise: 6".`,
        },
      ),
    );
  if (fields.buttoning && fields.buttons === undefined)
    diagnostics.push(
      diagnostic(
        context.place(["buttoning"]),
        "buttons-not-counted",
        `It is said how it is buttoned, and not with how many buttons.`,
        { hint: "Write buttons: and their number, or take buttoning out." },
      ),
    );
  const rough = fields.measured === false;
  const faulty = diagnostics.length > 0;
  const derived =
    rough || faulty
      ? { entries: [], assumed: false }
      : withJoins(
          headboardEntries(fields, context),
          fields.join,
          "both-sides",
          fields.cloth,
          fields.railroad === true,
          context,
        );
  const made = makeCover(
    {
      ...writtenJob(fields),
      title: fields.headboard,
      thing: "headboard",
      entries: derived.entries,
      loose: false,
      weltLength:
        fields["welt-length"] ??
        (fields.welt && !rough && !faulty
          ? weltRun(fields).plus(context.length("welt-lap"))
          : null),
    },
    rough
      ? { range: FIXED_RANGES.headboard, what: "a headboard about 60 in wide", short: "headboard" }
      : null,
    context,
  );
  const hung = fields.fixing !== "bed" && fields.fixing !== "legs";
  return {
    ...made,
    materials: [
      ...made.materials,
      ...(rough
        ? []
        : [
            sized("board, and foam for its face,", made.count, [width, height], units),
            sized(
              "wadding",
              made.count,
              [width.plus(depth.times(2)), height.plus(depth.times(2))],
              units,
            ),
            sized("lining for the back", made.count, [width, height], units),
            asNeeded("tacks or staples, and fixings of the fixer's choice"),
          ]),
    ],
    questions: [
      ...made.questions,
      ...(fields.fixing ? [] : ["How is it fixed: to the bed, to the wall, or on legs?"]),
      ...(hung && !fields.weight ? ["What does it weigh? The fixer wants to know."] : []),
      ...(derived.assumed ? [joinQuestion("both-sides")] : []),
      ...(rough
        ? []
        : [
            "How much of it does the mattress hide? The motif stands in the middle of the whole face.",
          ]),
    ],
    cautions: hung ? [...made.cautions, "heavy-hanging"] : made.cautions,
    diagnostics: [...diagnostics, ...made.diagnostics, ...liesOnBed(context)],
    size,
    border,
    rise,
    takeUp:
      fields.buttoning === "deep" && fields.buttons !== undefined
        ? context.ratio("buttoning").valueOf()
        : 1,
  };
}

/** A headboard stands behind its bed: said to be on it, it would be drawn nowhere. */
function liesOnBed(context: ItemContext): Diagnostic[] {
  if (!context.host) return [];
  return [
    diagnostic(
      context.place(["at"]),
      "headboard-on-bed",
      `A headboard stands behind ${context.host.name}, not on it; so placed it is drawn on no wall.`,
      {
        severity: "warning",
        expected: "its wall, with from-left and the height of its foot",
        hint: 'Write for example at: { wall: north, from-left: 4\' 8", height: 18" } and touches: with the bed’s name.',
      },
    ),
  ];
}
