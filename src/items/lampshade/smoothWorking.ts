import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { Frame } from "./frame.ts";
import type { LampshadePlan } from "./lampshadePlan.ts";
import type { LampshadeFields } from "./schema.ts";

/** The sums of a smooth shade: of a drum its way round and height, of a cone or empire the net that it is cut by. */
export function smoothWorking(
  fields: LampshadeFields,
  shade: Frame & Pick<LampshadePlan, "panels" | "cutWidth" | "cutHeight" | "lap" | "turn">,
  context: ItemContext,
  notes: Notes,
): void {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const mm = (value: number) => p(Length.mm(value.toFixed(4)));
  const rounded = units === "inches" ? "up to 1/8″" : "up to 1 mm";
  const { net, panels } = shade;
  if (!fields.form)
    notes.working.push({
      what: "Form",
      sum: "nothing was said",
      result: shade.form,
      rounded: null,
    });
  const parted = panels > 1 ? ` ÷ ${panels} panels` : "";
  if (!net) {
    notes.working.push(
      {
        what: "Cut, round the shade",
        sum: `π × ${p(shade.foot)}${parted} + ${p(shade.lap)} lap`,
        result: p(shade.cutWidth),
        rounded,
      },
      {
        what: "Cut, height",
        sum: `${p(shade.height)} + 2 × ${p(shade.turn)} turned over the rings`,
        result: p(shade.cutHeight),
        rounded: null,
      },
    );
    return;
  }
  const gap = shade.foot.minus(shade.top).dividedBy(2);
  notes.working.push(
    {
      what: "Slant",
      sum: `root of (${p(shade.height)}² + ${p(gap)}²)`,
      result: p(shade.slant),
      rounded: null,
    },
    {
      what: "Radius at the top",
      sum: `${p(shade.top.dividedBy(2))} × ${p(shade.slant)} ÷ ${p(gap)}`,
      result: mm(net.innerRadius),
      rounded: null,
    },
    {
      what: "Radius at the foot",
      sum: `${p(shade.foot.dividedBy(2))} × ${p(shade.slant)} ÷ ${p(gap)}`,
      result: mm(net.outerRadius),
      rounded: null,
    },
    {
      what: "Angle",
      sum: `360° × ${p(gap)} ÷ ${p(shade.slant)}${parted}`,
      result: `${(net.angleDeg / panels).toFixed(1)}°`,
      rounded: null,
    },
    {
      what: "Cut, the rectangle that holds it",
      sum: `the net with ${p(shade.lap)} lap at one straight edge and ${p(shade.turn)} turned at both curves`,
      result: printSize([shade.cutWidth, shade.cutHeight], units),
      rounded,
    },
  );
}
