import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { PaintFields } from "./schema.ts";
import { parseTin, type Tin } from "./volume.ts";

/** Sizes that paint is sold in where nothing is said (common practice, no source). */
const USUAL_TINS = { inches: ["1 gal", "1 qt"], centimetres: ["2.5 l", "5 l"] } as const;

/** The sizes of tin that it is bought in: the item's own, else the studio's, else the usual ones. */
export function tinSizes(fields: PaintFields, context: ItemContext, notes: Notes): readonly Tin[] {
  if (fields.tins && fields.tins.length > 0) return fields.tins;
  const read = (context.paint?.tins ?? []).flatMap((text) => {
    const tin = parseTin(text);
    if (tin) return [tin];
    notes.diagnostics.push(unreadableInStudio("tins", text, "1 gal, 1 qt, 2.5 l", context));
    return [];
  });
  return read.length > 0 ? read : USUAL_TINS[context.units].map((text) => parseTin(text) as Tin);
}

/** What stands under `paint` in studio.md and cannot be read. */
export function unreadableInStudio(
  what: string,
  text: string,
  example: string,
  context: ItemContext,
): Diagnostic {
  return diagnostic(
    context.place([]),
    "studio-paint-unreadable",
    `The ${what} "${text}" under paint in studio.md cannot be read.`,
    {
      severity: "warning",
      actual: text,
      expected: example,
      hint: `Write for example ${example}; until then the usual figure is taken.`,
    },
  );
}
