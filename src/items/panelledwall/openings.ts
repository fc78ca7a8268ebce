import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext, WallRun } from "../itemKind.ts";
import type { Panel } from "./layout.ts";
import type { PanelledWallFields } from "./schema.ts";

/** A window or a door within a panelled wall, from its upper left corner. */
export interface PanelOpening {
  readonly what: string;
  readonly left: Length;
  readonly top: Length;
  readonly width: Length;
  readonly height: Length;
}

interface OnWall {
  readonly wall: string;
  readonly "from-left"?: Length;
  readonly height?: Length;
}

/** The wall and place that it is at, or null. */
function wallOf(fields: PanelledWallFields): OnWall | null {
  const at = fields.at as OnWall | undefined;
  return at && typeof at === "object" && "wall" in at && !("floor" in at) ? at : null;
}

/** Windows and doors within the panelled wall, from its upper left corner. */
export function openingsIn(
  fields: PanelledWallFields,
  context: ItemContext,
  width: Length,
  height: Length,
): readonly PanelOpening[] {
  const at = wallOf(fields);
  const runs: readonly WallRun[] = at ? (context.runs([at.wall]) ?? []) : [];
  if (runs.length === 0) return [];
  // Without from-left it stands at the middle of its wall.
  const length = Length.max(...runs.map((run) => run.fromLeft.plus(run.width)));
  const left = at?.["from-left"] ?? length.minus(width).dividedBy(2);
  const foot = at?.height ?? Length.zero;
  return runs.flatMap((run) =>
    run.openings.flatMap((o) => {
      const from = o.fromLeft.minus(left);
      const top = foot.plus(height).minus(o.foot).minus(o.height);
      const inside =
        from.isLessThan(width) &&
        from.plus(o.width).isMoreThan(Length.zero) &&
        top.isLessThan(height) &&
        top.plus(o.height).isMoreThan(Length.zero);
      return inside ? [{ what: o.what, left: from, top, width: o.width, height: o.height }] : [];
    }),
  );
}

/** Says where no wall is named, and which panels would run over an opening. */
export function checkOpenings(
  fields: PanelledWallFields,
  good: readonly Panel[],
  openings: readonly PanelOpening[],
  context: ItemContext,
  notes: Notes,
): void {
  const p = (l: Length) => printLength(l, context.units);
  if (!wallOf(fields))
    notes.diagnostics.push(
      diagnostic(
        context.place(["at"]),
        "panelled-without-wall",
        "It is not said on which wall the panels are.",
        {
          expected: "at: { wall: …, from-left: …, height: … }",
          hint: `Write for example at: { wall: north, from-left: 0", height: 6" } (or 0 cm, 15 cm): its left end, and its foot above the floor.`,
        },
      ),
    );
  for (const opening of openings) {
    const met = good.filter(
      (q) =>
        q.left.isLessThan(opening.left.plus(opening.width)) &&
        q.left.plus(q.width).isMoreThan(opening.left) &&
        q.top.isLessThan(opening.top.plus(opening.height)) &&
        q.top.plus(q.height).isMoreThan(opening.top),
    );
    if (met.length > 0)
      notes.diagnostics.push(
        diagnostic(
          context.place(["panels"]),
          "panel-over-opening",
          `Panel ${met.map((q) => q.number).join(", ")} would run over the ${opening.what}, which is ${p(opening.left)} to ${p(opening.left.plus(opening.width))} from the panelling's left end.`,
          {
            hint: `Panel each side by itself as an item of its own: one ${p(Length.max(opening.left, Length.zero))} wide to the left of the ${opening.what}, and one to its right.`,
          },
        ),
      );
  }
}
