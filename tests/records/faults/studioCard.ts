import { changed, ROOM } from "../studio.ts";
import type { Fault } from "./fault.ts";

/** What a studio allows, charges and waives. */
export const STUDIO_CARD: readonly Fault[] = [
  {
    name: "an allowance that its kind does not know",
    files: changed("studio.md", `hem: 10"`, `hme: 10"`),
    says: [
      "studio.md:9:27 error key-unknown: “hme” is not a key that can stand here. -> Did you mean hem?",
    ],
  },
  {
    name: "an allowance of another sort",
    files: changed("studio.md", `fullness: 2.5`, `fullness: 10"`),
    says: [
      'studio.md:9:47 error ratio-unreadable: “10"” is not a number of more than zero. -> Write it in figures, without a unit.',
    ],
  },
  {
    name: "a maker's work that is misspelt",
    files: changed("studio.md", `makes: [curtains, cushion]`, `makes: [curtians, cushion]`),
    says: [
      "studio.md:11:39 error work-unknown: “curtians” is no kind of item or work that is known here. -> Did you mean curtains?",
    ],
  },
  {
    name: "a rate that is misspelt",
    files: changed(
      "studio.md",
      `rates: { curtains: 48 per width }`,
      `rates: { curtians: 48 per width }`,
    ),
    says: [
      "studio.md:11:68 error work-unknown: “curtians” is no kind of item or work that is known here. -> Did you mean curtains?",
    ],
  },
  {
    name: "a rate for an unknown measure",
    files: changed("studio.md", `48 per width`, `48 per ell`),
    says: [
      'studio.md:11:78 error rate-unit-unknown: A rate cannot be "per ell". -> After "per" may stand: item, width, drop, yard, metre, roll, hour, day, square-metre, square-foot.',
    ],
  },
  {
    name: "a waiver of no finding",
    files: changed(
      ROOM,
      `anchor: tiled-stove`,
      `accept: [{ finding: rungs-closed, because: So. }]`,
    ),
    says: [
      "projects/quay/dining-room.md:10:21 error finding-unknown: There is no finding called “rungs-closed”. -> Did you mean rungs-close?",
    ],
  },
  {
    name: "a waiver of a cloth that is misspelt",
    files: changed(
      ROOM,
      `anchor: tiled-stove`,
      `accept: [{ finding: rungs-close, of: [fern-treliss], because: So. }]`,
    ),
    says: [
      "projects/quay/dining-room.md:10:39 error accepted-unknown: Nothing here is called “fern-treliss”. -> Did you mean fern-trellis?",
    ],
  },
];
