import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { ItemContext } from "../itemKind.ts";
import type { CushionFields } from "./schema.ts";

export type CushionForm = NonNullable<CushionFields["form"]>;

/** The form that is named, else the one that a thickness or a flange tells of, else a knife edge. */
export function formOf(fields: CushionFields): CushionForm {
  if (fields.form) return fields.form;
  if (fields.thickness) return "box";
  return fields.flange ? "flange" : "knife";
}

/** What a form needs and does not have, or has and cannot use; each at its own line. */
export function formFaults(fields: CushionFields, context: ItemContext): Diagnostic[] {
  const form = formOf(fields);
  const found: Diagnostic[] = [];
  const lacks = (key: "thickness" | "flange", example: string) => {
    found.push(
      diagnostic(
        context.place(["form"]),
        "form-not-measured",
        `A ${form} cushion needs its ${key}, and none is written.`,
        { actual: form, expected: key, hint: `Write ${key}: ${example}` },
      ),
    );
  };
  if (form === "box" && !fields.thickness) lacks("thickness", '3"');
  if (form === "flange" && !fields.flange) lacks("flange", '2"');
  const only = {
    thickness: "box",
    boxing: "box",
    flange: "flange",
    section: "bolster",
  } as const;
  for (const [key, belongs] of Object.entries(only) as [keyof typeof only, CushionForm][]) {
    if (fields[key] === undefined || form === belongs) continue;
    found.push(
      diagnostic(
        context.place([key]),
        "not-of-this-form",
        `A ${form} cushion has no ${key}, so this line says nothing.`,
        { severity: "warning", actual: key, hint: `Take it out, or write form: ${belongs}.` },
      ),
    );
  }
  if (fields.closure === "envelope" && (form === "box" || form === "bolster")) {
    found.push(
      diagnostic(
        context.place(["closure"]),
        "envelope-not-of-this-form",
        `A ${form} cushion cannot close as an envelope; a zip is taken.`,
        {
          severity: "warning",
          actual: "envelope",
          expected: "zip or sewn",
          hint: "Write closure: zip or closure: sewn.",
        },
      ),
    );
  }
  const [length, across] = fields.size;
  if (form === "bolster" && length && across?.isMoreThan(length)) {
    const p = (l: Length) => printLength(l, context.units);
    found.push(
      diagnostic(
        context.place(["size"]),
        "bolster-thicker-than-long",
        `This bolster is ${p(length)} long and ${p(across)} thick: its size is length x diameter.`,
        {
          severity: "warning",
          actual: p(across),
          hint: `Write size: ${p(across)} x ${p(length)}, unless it is so short.`,
        },
      ),
    );
  }
  const { thickness } = fields;
  if (form === "box" && length && across && thickness?.isMoreThan(Length.max(length, across))) {
    const p = (l: Length) => printLength(l, context.units);
    found.push(
      diagnostic(
        context.place(["thickness"]),
        "cushion-thicker-than-wide",
        `This cushion is ${p(length)} wide, ${p(across)} deep and ${p(thickness)} thick.`,
        {
          severity: "warning",
          actual: p(thickness),
          hint: "size is its width x depth, thickness the height of its boxing: look at its unit and its point.",
        },
      ),
    );
  }
  return found;
}
