import { z } from "zod";
import { refuse } from "../../fields/fault.ts";
import { isUnlikelyCoverage, parseCoverage, parseTin, type Tin } from "./volume.ts";

/** A tin's coverage as its label has it: square metres a litre, exact, with the words that were typed. */
export function coverageField() {
  return z
    .string()
    .transform((text, context) => {
      const read = parseCoverage(text);
      if (read && isUnlikelyCoverage(read))
        return refuse(context, text, {
          code: "coverage-unlikely",
          message: `No paint covers ${text.trim()} in one coat.`,
          expected: "6 to 15 m2/l, or 250 to 600 sq ft/gal",
          hint: "Look at both units: a tin says for example 12 m2/l or 400 sq ft/gal.",
        });
      return read
        ? { ...read, text: text.trim() }
        : refuse(context, text, {
            code: "coverage-unreadable",
            message: `"${text}" is not a coverage.`,
            expected: "an area for a volume",
            hint: "Write it as on the tin, for example 12 m2/l or 400 sq ft/gal.",
          });
    })
    .meta({ examples: ["12 m2/l", "400 sq ft/gal"] });
}

/** A size of tin. */
export function tinField() {
  return z
    .string()
    .transform(
      (text, context): Tin =>
        parseTin(text) ??
        refuse(context, text, {
          code: "tin-unreadable",
          message: `"${text}" is not the size of a tin.`,
          expected: "a volume with its unit",
          hint: "Write for example 1 gal, 1 qt, 2.5 l or 750 ml.",
        }),
    )
    .meta({ examples: ["1 gal", "2.5 l"] });
}
