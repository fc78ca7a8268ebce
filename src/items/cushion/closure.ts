import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { boughtAs } from "../common/boughtLength.ts";
import type { ItemContext, MaterialNeed, WorkingLine } from "../itemKind.ts";
import type { Boxing } from "./boxing.ts";
import type { CushionForm } from "./forms.ts";
import type { CushionFields } from "./schema.ts";
import type { CushionSizes } from "./sizes.ts";

export type Closure = "zip" | "envelope" | "sewn";

/** How the cover closes: as it is said, a zip where nothing is. Only a stuffed cover without boxing can be an envelope. */
export function closureOf(fields: CushionFields, form: CushionForm): Closure {
  const asked = fields.closure ?? "zip";
  const stuffed = form === "knife" || form === "flange";
  return asked === "envelope" && !stuffed ? "zip" : asked;
}

/** The zip's length: the run of the zip boxing, else the width less what it stays short of; null where there is none. */
export function zipOf(
  closure: Closure,
  sizes: CushionSizes,
  boxing: Boxing | null,
  context: ItemContext,
): Length | null {
  if (closure !== "zip") return null;
  const [width] = sizes.stated;
  const shorter = context.length("zip-short");
  return boxing?.zipRun ?? (width.isMoreThan(shorter.times(2)) ? width.minus(shorter) : width);
}

/** The zips to buy, one a cushion. */
export function zipNeed(zip: Length, count: number, context: ItemContext): MaterialNeed {
  const length = printLength(zip, context.units);
  return boughtAs(`zip ${length}`, `${count} ${count === 1 ? "zip" : "zips"} of ${length}`, count);
}

/** Where the zip is put when nothing was said of the closure; `backMeetsAt` tells of two backs. */
export function closureWorking(
  sizes: CushionSizes,
  backMeetsAt: "envelope" | "zip" | null,
  boxing: Boxing | null,
): WorkingLine {
  return {
    what: "Closure",
    sum: "nothing was said",
    result: boxing
      ? "zip in the back boxing"
      : sizes.bolster
        ? "zip along the body"
        : backMeetsAt === "zip"
          ? "zip across the middle of the back"
          : "zip in the lower seam",
    rounded: null,
  };
}
