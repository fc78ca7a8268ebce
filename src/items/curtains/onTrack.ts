import { type Diagnostic, diagnostic } from "../../diagnostics/diagnostic.ts";
import type { ItemContext } from "../itemKind.ts";
import type { CurtainsFields } from "./schema.ts";

/** Headings that a pole goes through or that go round one. */
const ON_POLE: readonly string[] = ["eyelet", "tab", "slot"];

/**
 * True of curtains that hang from a track, whose heading covers it: as the file says; where it says nothing s-folds and what hangs inside a
 * recess, but for headings that want a pole; all else from a pole, with its heading under the rings.
 */
export function onTrack(fields: CurtainsFields): boolean {
  const said = fields["hangs-from"];
  if (said) return said === "track";
  return (
    fields.heading === "s-fold" || (fields.mount === "inside" && !ON_POLE.includes(fields.heading))
  );
}

/** What its height over the floor is measured to. */
export function railPoint(fields: CurtainsFields): string {
  return onTrack(fields) ? "track" : "pole's middle";
}

/** A warning where a track is bought for curtains that are reckoned on a pole: where their heading begins hangs on it. */
function trackForPole(fields: CurtainsFields, context: ItemContext): Diagnostic[] {
  const at = (fields.hardware ?? []).findIndex(({ what }) => /\btracks?\b/i.test(what));
  if (at < 0 || fields["hangs-from"] || onTrack(fields) || ON_POLE.includes(fields.heading))
    return [];
  return [
    diagnostic(
      context.place(["hardware", at, "what"]),
      "track-for-pole",
      "A track is bought for these curtains, and they are measured as on a pole, with their heading under its rings.",
      {
        severity: "warning",
        actual: fields.hardware?.[at]?.what ?? null,
        hint: "Write hangs-from: track, and the heading begins at the track; or hangs-from: pole, if it is one.",
      },
    ),
  ];
}

/**
 * An error where the heading cannot hang from what is written (eyelets, tabs and a slot want a pole, s-folds a track); a warning where
 * nothing is written and a track is bought.
 */
export function checkHangsFrom(fields: CurtainsFields, context: ItemContext): Diagnostic[] {
  const said = fields["hangs-from"];
  const { heading } = fields;
  const isWrong =
    said === "track" ? ON_POLE.includes(heading) : said === "pole" && heading === "s-fold";
  if (!isWrong) return trackForPole(fields, context);
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
