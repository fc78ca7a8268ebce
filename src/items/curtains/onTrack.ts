import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ItemContext } from "../itemKind.ts";
import type { CurtainsFields } from "./schema.ts";

/** Headings that a pole goes through or that go round one. */
const ON_POLE: readonly string[] = ["eyelet", "tab", "slot"];

/**
 * True of curtains that hang from a track, whose heading covers it: as the file says; where it says nothing s-folds and what hangs inside a
 * recess, all else from a pole, with its heading under the rings.
 */
export function onTrack(fields: CurtainsFields): boolean {
  const said = fields["hangs-from"];
  return said ? said === "track" : fields.heading === "s-fold" || fields.mount === "inside";
}

/** An error where the heading cannot hang from what is written: eyelets, tabs and a slot want a pole, s-folds a track. */
export function checkHangsFrom(fields: CurtainsFields, context: ItemContext): Diagnostic[] {
  const said = fields["hangs-from"];
  const { heading } = fields;
  const isWrong =
    said === "track" ? ON_POLE.includes(heading) : said === "pole" && heading === "s-fold";
  if (!isWrong) return [];
  const other = said === "track" ? "pole" : "track";
  return [
    diagnostic(
      context.place(["hangs-from"]),
      "heading-hangs-otherwise",
      `A heading ${heading} hangs from a ${other}, not from a ${said}.`,
      {
        actual: said ?? null,
        expected: other,
        hint: `Write hangs-from: ${other}, or another heading.`,
      },
    ),
  ];
}
