import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printMeasured, printSize } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import { type Development, developFrustum, sideArea } from "./development.ts";
import type { LampshadeFields } from "./schema.ts";

/** What a shade is made round: its rings and its side. */
export interface Frame {
  readonly form: "drum" | "cone" | "empire";
  readonly foot: Length;
  readonly top: Length;
  readonly height: Length;
  readonly slant: Length;
  /** The net of a cone or an empire, millimetres; null for a drum. */
  readonly net: Development | null;
  readonly areaMm2: number;
}

/** The frame that a shade's fields describe; null, with a diagnostic, where there is none such. */
export function frameOf(fields: LampshadeFields, context: ItemContext, notes: Notes): Frame | null {
  const p = (length: Length) => printLength(length, context.units);
  const fault = (key: string, code: string, message: string, more: object) => {
    notes.diagnostics.push(diagnostic(context.place([key]), code, message, more));
    return null;
  };
  const [foot, height] = fields.size as [Length, Length];
  if (foot.isZero() || height.isZero())
    return fault("size", "lampshade-is-nothing", "A lampshade needs a diameter and a height.", {
      hint: `Write for example size: 16" x 10" or 41 cm x 25 cm.`,
    });
  const form = fields.form ?? (fields.top && !fields.top.equals(foot) ? "empire" : "drum");
  const top = form === "drum" ? foot : fields.top;
  if (!top)
    return fault(
      "form",
      "lampshade-without-top",
      `A lampshade of the form ${form} needs the diameter of its top.`,
      {
        expected: "top",
        hint: `Write its top, less than the ${p(foot)} of its foot, for example top: 8" or 20 cm; or form: drum.`,
      },
    );
  if (form === "drum" && fields.top && !fields.top.equals(foot))
    return fault(
      "top",
      "drum-with-slope",
      `A drum is as wide at its top as at its foot, ${p(foot)}.`,
      {
        actual: fields.top.typed,
        hint: "Take the line out, or write form: empire.",
      },
    );
  if (form !== "drum" && !top.isLessThan(foot))
    return fault(
      "top",
      "lampshade-upside-down",
      `The top is ${p(top)} across, the foot ${p(foot)}: the top must be the narrower.`,
      {
        actual: top.typed,
        expected: `less than ${p(foot)}`,
        hint: "Size begins with the diameter at the foot. For upright sides write form: drum.",
      },
    );
  const [r, big, high] = [top.toMm() / 2, foot.toMm() / 2, height.toMm()];
  const net = form === "drum" ? null : developFrustum(r, big, high);
  const slant = Length.mm((net?.slant ?? high).toFixed(6));
  const areaMm2 = net ? sideArea(r, big, high) : Math.PI * foot.toMm() * high;
  return { form, foot, top, height, slant, net, areaMm2 };
}

/** How far a measured slant may be from what height and diameters give. */
const SLANT_OFF_MM = 25.4 / 4;

/** True where the slant, if it was measured, is that of the frame; else a diagnostic says what it must be. */
export function slantAgrees(
  fields: LampshadeFields,
  { form, foot, top, height, slant }: Frame,
  context: ItemContext,
  notes: Notes,
): boolean {
  if (!fields.slant) return true;
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const off = Math.abs(fields.slant.toMm() - slant.toMm());
  if (off <= SLANT_OFF_MM + 1e-6) return true;
  notes.diagnostics.push(
    diagnostic(
      context.place(["slant"]),
      "slant-disagrees",
      `${form === "empire" ? "An" : "A"} ${form} ${printSize([foot, height], units)} with a top of ${p(top)} slants ${p(slant)}, not ${printMeasured(fields.slant, units)}.`,
      {
        actual: fields.slant.typed,
        expected: p(slant),
        hint: "Measure again: the height stands upright, the slant lies along the side.",
      },
    ),
  );
  return false;
}
