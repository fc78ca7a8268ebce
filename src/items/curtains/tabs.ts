import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import {
  centredAcross,
  centredPlace,
  hasMotif,
  wholeRepeats,
} from "../common/join/centredMotif.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { FaceCloth } from "./curtainWidths.ts";
import type { HeadingPlan } from "./headingPlan.ts";
import type { TabHeading } from "./poleHeadings.ts";
import type { CurtainsFields } from "./schema.ts";

/** Whether tabs are cut alike; asked where the cloth has a pattern and nothing is said, refused where no motif has room. */
export function areTabsAlike(
  fields: CurtainsFields,
  heading: HeadingPlan,
  cloth: ClothFacts,
  context: ItemContext,
  notes: Notes,
): boolean {
  const said = fields["tab-match"];
  if (heading.heading !== "tab") {
    if (said)
      notes.diagnostics.push(
        diagnostic(context.place(["tab-match"]), "tabs-of-no-tab", "This heading has no tabs.", {
          severity: "warning",
          hint: "Take the line out, or write heading: tab.",
        }),
      );
    return false;
  }
  if (!hasMotif(cloth)) return false;
  if (!said)
    notes.questions.push(
      `Are the tabs of ${cloth.name} to be all alike, a motif in the middle of each? As the pattern falls is assumed, which takes less cloth.`,
    );
  if (said !== "alike") return false;
  const place = centredPlace(cloth, heading.stripWidth, heading.stripLength);
  if (place.fits) return true;
  notes.diagnostics.push(
    diagnostic(
      context.place(["tab-match"]),
      "tab-motif-no-room",
      `No motif of ${cloth.name} can stand in the middle of a strip ${printLength(heading.stripWidth, context.units)} wide.`,
      {
        actual: said,
        hint: "Write tab-match: as-it-falls, or make the tabs narrower (allowance tab-width).",
      },
    ),
  );
  return false;
}

/** The length of rows that hold every tab side by side across the cloth; rows go up, alike ones to whole repeats. */
function tabsLength(
  heading: TabHeading,
  curtains: number,
  usableWidth: Length,
  alike: ClothFacts | null,
): Length {
  const across = alike
    ? Math.max(1, centredAcross(alike, heading.stripWidth))
    : Math.max(1, usableWidth.over(heading.stripWidth).floor().valueOf());
  const up = alike?.repeat && alike.repeat.match !== "free" ? alike.repeat.up : null;
  return wholeRepeats(heading.stripLength, up).times(Math.ceil((heading.tabs * curtains) / across));
}

/** The handbook's length for the tabs of so many curtains, with its working; nothing for another heading. */
export function tabRows(
  heading: HeadingPlan,
  curtains: number,
  alike: boolean,
  { cloth, usableWidth }: FaceCloth,
  context: ItemContext,
  notes: Notes,
): Length {
  if (heading.heading !== "tab") return Length.zero;
  const p = (length: Length) => printLength(length, context.units);
  const rows = tabsLength(heading, curtains, usableWidth, alike ? cloth : null);
  if (!rows.isZero())
    notes.working.push({
      what: "By the handbook, tabs in rows",
      sum: `${p(heading.stripLength)} a row across ${p(usableWidth)}${alike ? ", each with a motif in its middle" : ""}`,
      result: p(rows),
      rounded: "up to whole rows",
    });
  return rows;
}
