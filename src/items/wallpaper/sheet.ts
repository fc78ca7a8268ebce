import { printLength, printMeasured } from "../../units/printLength.ts";
import { blankUnit } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet, SheetGroup } from "../itemDrawing.ts";
import { firstWall, wayWords } from "./ceiling.ts";
import type { WallpaperMade } from "./pieces.ts";
import type { WallpaperFields } from "./schema.ts";

/** Words of a wallpaper on its hanger's sheet. */
export function wallpaperSheet(
  fields: WallpaperFields,
  made: WallpaperMade,
  context: DrawingContext,
): ItemSheet {
  const { units } = context;
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, units);
  const cloth = context.cloth(fields.cloth);
  const saved = made.stretches.reduce((n, s) => n + s.saved, 0);
  const repeat = made.repeat;
  const half = repeat?.match === "half-drop";
  const groups: SheetGroup[] = [
    {
      heading: "Paper",
      lines: [
        `${cloth?.name ?? fields.cloth}.`,
        ...(made.rollWidth && made.rollLength
          ? [
              `Rolls ${printMeasured(made.rollWidth, units)} wide, ${printMeasured(made.rollLength, units)} long.`,
            ]
          : ["Roll size not known."]),
        repeat
          ? `Repeat ${p(repeat.up)}, ${repeat.match} match.`
          : cloth?.repeatUnknown
            ? "Repeat not known: ask before cutting."
            : "No match.",
      ],
    },
    {
      heading: "Rolls",
      lines:
        made.rollsHung === null
          ? ["Not reckoned yet."]
          : [
              `${made.rollsHung + made.spare} rolls of one batch, ${made.spare} of them spare.`,
              `${made.perRoll} ${made.perRoll === 1 ? "strip" : "strips"} a roll, wherever in the pattern it begins.`,
            ],
    },
    {
      heading: "Strips",
      lines: [
        `${made.strips} strips, cut ${p(made.cut)}.`,
        ...(repeat && made.spacing ? [`From start to start in a roll ${p(made.spacing)}.`] : []),
        ...(half
          ? [
              made.hanging === "two-stocks"
                ? "Odd strips from one stock of rolls, even ones from another."
                : "Cut in turn; each second strip begins half a repeat on.",
            ]
          : []),
        ...(saved > 0
          ? [`${saved} left out at large openings; heads and feet there are cut from other strips.`]
          : []),
      ],
    },
    ...made.borders.map((border) => ({
      heading: `Border ${border.name}`,
      lines: [
        border.rolls === null
          ? "Rolls not reckoned yet."
          : `${border.rolls + border.spare} rolls, ${border.spare} of them spare, for ${p(border.run)}.`,
        border.at === "ceiling"
          ? `Under the ceiling line, ${p(border.width)} wide.`
          : `Lower edge ${p(border.foot)} above the floor, ${p(border.width)} wide.`,
        "Over the paper when it is dry; joins in register, where they are least seen.",
      ],
    })),
    {
      heading: "Hanging",
      lines: made.ceiling
        ? [
            `On the ceiling, strips ${wayWords(made.ceiling)}.`,
            `Strips are numbered from the ${firstWall(made.ceiling)} wall. Drawn as a reflected ceiling plan: it lies as the floor's plan does, not as one sees it from below.`,
          ]
        : [
            "Whole motif under the ceiling line where nothing else is said.",
            "Strips are numbered from the left, seen from inside.",
          ],
    },
    ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
  ];
  const cornered = made.stretches.some(({ runs }) =>
    runs.some((run, at) => at > 0 && run.wall === runs[at - 1]?.wall),
  );
  return {
    groups,
    checks: [
      { text: "All rolls of one batch, number", blank: "" },
      { text: "Rolls unrolled and looked at for flaws", blank: null },
      ...(repeat ? [{ text: "Repeat measured", blank: blankUnit(units) }] : []),
      { text: `${made.ceiling ? "Ceiling" : "Wall"} sound and dry`, blank: null },
      {
        text: made.ceiling ? "Strips measured at both ends" : "Height measured at both ends",
        blank: blankUnit(units),
      },
      { text: "Spare paper left with the client", blank: null },
    ],
    signs: [
      "Long dash, two dots: join of two strips.",
      ...(repeat ? ["Dotted: level of the motif."] : []),
      "Numbers: strips in the order of hanging.",
      ...(cornered ? ["Heavy upright: corner, the wall opened out flat."] : []),
      ...(made.borders.length > 0 ? ["Double lines: border."] : []),
    ],
  };
}
