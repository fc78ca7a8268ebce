import Fraction from "fraction.js";
import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ItemContext, Made, ObjectFacts } from "../itemKind.ts";
import type { ObjectItemFields } from "./schema.ts";

/** A thing that is placed and not made. */
export interface ObjectMade extends Made {
  readonly count: number;
  readonly facts: ObjectFacts | null;
  /** It hangs on a wall. */
  readonly hangs: boolean;
}

const HANGING: ReadonlySet<ObjectFacts["shape"]> = new Set(["picture", "mirror"]);

/** True where the item is given a height on a wall, or is a picture or mirror that stands on nothing. */
function hangsOnWall(fields: ObjectItemFields, facts: ObjectFacts | null): boolean {
  const at = fields.at;
  const raised =
    typeof at === "object" &&
    "wall" in at &&
    "height" in at &&
    at.height !== undefined &&
    !at.height.isZero();
  const stands = typeof at === "object" && ("floor" in at || "on" in at);
  return raised || (facts !== null && HANGING.has(facts.shape) && !stands);
}

/** Nothing is cut or bought here; what hangs carries its weight, as typed, and the caution. */
export function makeObject(fields: ObjectItemFields, context: ItemContext): ObjectMade {
  const facts = context.object(fields.object);
  const diagnostics: Diagnostic[] = [];
  const questions: string[] = [];
  const count = fields.count ?? 1;
  const hangs = hangsOnWall(fields, facts);
  if (facts && (facts.width === null || (facts.height === null && facts.depth === null))) {
    diagnostics.push(
      diagnostic(
        context.place(["object"]),
        "object-without-size",
        `${facts.name} has no size on its card, so it is not drawn.`,
        {
          severity: "warning",
          expected: "a size on the object's card",
          hint: `Write on the card, for example size: 30" x 20" x 72" or 76 cm x 51 cm x 183 cm, or width x height for a rug or a picture.`,
        },
      ),
    );
  }
  if (hangs && facts && facts.weight === null)
    questions.push(`The weight of ${facts.name} is not known; its fixings wait for it.`);
  return {
    figures: {
      pieces: count,
      widthMm: facts?.width?.toMm() ?? 0,
      depthMm: facts?.depth?.toMm() ?? 0,
      heightMm: facts?.height?.toMm() ?? 0,
    },
    cuts: [],
    materials: [],
    handbook: [],
    working: facts?.weight
      ? [{ what: "Weight", sum: "as given", result: facts.weight, rounded: null }]
      : [],
    makingCounts: { item: new Fraction(count) },
    questions,
    cautions: hangs ? ["heavy-hanging"] : [],
    estimate: null,
    diagnostics,
    count,
    facts,
    hangs,
  };
}
