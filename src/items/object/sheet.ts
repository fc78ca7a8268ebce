import { printLength, printSize } from "../../units/printLength.ts";
import { weightUnit } from "../common/sheetWords.ts";
import type { DrawingContext, ItemSheet } from "../itemDrawing.ts";
import type { ObjectMade } from "./pieces.ts";
import type { ObjectItemFields } from "./schema.ts";

/** Words of a placed object on the fitter's sheet. Its weight stands as it was given; no fixing is named. */
export function objectSheet(
  fields: ObjectItemFields,
  made: ObjectMade,
  context: DrawingContext,
): ItemSheet {
  const facts = made.facts;
  const at = fields.at;
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, context.units);
  const sizes = facts
    ? [facts.width, facts.depth, facts.height].flatMap((l) => (l ? [l] : []))
    : [];
  const foot = typeof at === "object" && "height" in at ? (at.height ?? null) : null;
  const left = typeof at === "object" && "from-left" in at ? (at["from-left"] ?? null) : null;
  const where = [
    ...(typeof at === "object" && "wall" in at && at.wall
      ? [
          `${at.wall[0]?.toUpperCase()}${at.wall.slice(1)} wall${left ? `, ${p(left)} from its left end to the left edge${made.count > 1 ? " of the first" : ""}` : ""}.`,
        ]
      : []),
    ...(foot && facts?.height
      ? [`Foot ${p(foot)}, middle ${p(foot.plus(facts.height.dividedBy(2)))} above the floor.`]
      : []),
    ...(made.hangs && made.count > 1
      ? ["How the others hang to it, and how far apart, is not said: ask before drilling."]
      : []),
    ...(typeof at === "object" && "on" in at ? [`On ${at.on}.`] : []),
  ];
  return {
    groups: [
      {
        heading: "Piece",
        lines: [
          `${facts?.name ?? fields.object}${made.count > 1 ? `, ${made.count} alike` : ""}.`,
          ...(sizes.length > 0 ? [`${printSize(sizes, context.units)}.`] : ["Size not known."]),
          ...(facts?.stays ? ["It stays in the room."] : []),
        ],
      },
      ...(made.hangs
        ? [
            {
              heading: "Weight",
              lines: [
                facts?.weight
                  ? `${facts.weight}${made.count > 1 ? " each" : ""}`
                  : "Not known: ask before fixing.",
              ],
            },
          ]
        : []),
      ...(where.length > 0 ? [{ heading: "Place", lines: where }] : []),
      ...(fields.note ? [{ heading: "Note", lines: [fields.note] }] : []),
    ],
    checks: made.hangs
      ? [
          { text: "Wall looked at, fixings chosen and rated by the fixer", blank: null },
          { text: "Weighed", blank: weightUnit(context.units) },
          { text: "Height checked from the floor", blank: null },
          { text: "Level", blank: null },
        ]
      : [{ text: "Arrived whole, stands as drawn", blank: null }],
    signs: made.hangs ? ["Long and short dashes: its middle."] : [],
  };
}
