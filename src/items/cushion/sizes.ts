import { Length } from "../../units/length.ts";
import { printLength, printSize, type UnitSystem } from "../../units/printLength.ts";
import { upToFinestStep } from "../common/finestStep.ts";
import type { ItemContext, WorkingLine } from "../itemKind.ts";
import { type Bolster, bolsterOf } from "./bolster.ts";
import { type CushionForm, formOf } from "./forms.ts";
import type { CushionFields } from "./schema.ts";

/** The sizes that every step of making a cushion looks at. */
export interface CushionSizes {
  readonly form: CushionForm;
  /** As stated: width and height, of a bolster its length and diameter. */
  readonly stated: readonly [Length, Length];
  readonly seam: Length;
  /** Width of the border beyond the stuffing; zero without one. */
  readonly flange: Length;
  /** As stated, and the flange at every edge. */
  readonly outside: readonly [Length, Length];
  readonly bolster: Bolster | null;
  /** The face as cut, of a bolster its body. */
  readonly cut: readonly [Length, Length];
  /** How the face's cut comes about. */
  readonly because: string;
  /** The cloth is run sideways. */
  readonly railroad: boolean;
  readonly count: number;
}

/** Face: the stated size, twice the flange and two seams each way; a bolster's body wraps its roll. Exact but for a round wrap. */
export function cushionSizes(fields: CushionFields, context: ItemContext): CushionSizes {
  const p = (l: Length) => printLength(l, context.units);
  const stated = fields.size as [Length, Length];
  const seam = context.length("seam");
  const form = formOf(fields);
  const flange = form === "flange" ? (fields.flange ?? Length.zero) : Length.zero;
  const outside = [stated[0].plus(flange.times(2)), stated[1].plus(flange.times(2))] as const;
  const bolster = form === "bolster" ? bolsterOf(fields, context, seam) : null;
  const added = flange.isZero() ? "" : ` + 2 × ${p(flange)} flange`;
  return {
    form,
    stated,
    seam,
    flange,
    outside,
    bolster,
    cut: bolster?.body ?? [outside[0].plus(seam.times(2)), outside[1].plus(seam.times(2))],
    because:
      bolster?.because ??
      `${printSize(stated, context.units)}${added} + 2 × ${p(seam)} seams each way`,
    railroad: fields.railroad === true,
    count: fields.count ?? 1,
  };
}

/** The working of the face, of a box's two plates, or of a bolster's body. */
export function faceWorking(sizes: CushionSizes, units: UnitSystem): WorkingLine {
  const { bolster } = sizes;
  return {
    what: bolster ? "Body" : sizes.form === "box" ? "Top and bottom" : "Face",
    sum: sizes.because,
    result: printSize(sizes.cut, units),
    rounded: bolster?.section === "round" ? upToFinestStep(units) : null,
  };
}
