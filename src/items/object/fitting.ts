import { small } from "../../units/capital.ts";
import { printLength } from "../../units/printLength.ts";
import { alongWall } from "../common/fittingWords.ts";
import type { FittingContext, FittingLine } from "../itemDrawing.ts";
import type { ObjectMade } from "./pieces.ts";
import type { ObjectItemFields } from "./schema.ts";
import { objectSheet } from "./sheet.ts";

/** What the fitter of a picture or mirror reads: the words of its sheet, and its place on the wall as it is drawn; null of what stands. */
export function objectFitting(
  fields: ObjectItemFields,
  made: ObjectMade,
  context: FittingContext,
): FittingLine | null {
  if (!made.hangs) return null;
  const { box, units } = context;
  const p = (l: Parameters<typeof printLength>[0]) => printLength(l, units);
  const sheet = objectSheet(fields, made, context);
  const along = box ? alongWall(box.left, box.width, units) : "";
  const place = box && [
    made.count > 1 ? `The first: ${small(along)}` : along,
    `Foot ${p(box.foot)}, middle ${p(box.foot.plus(box.height.dividedBy(2)))}, top ${p(box.foot.plus(box.height))} above the floor.`,
    ...(made.count > 1
      ? ["How the others hang to it, and how far apart, is not said: ask before drilling."]
      : []),
  ];
  return {
    groups: sheet.groups
      .filter(({ heading }) => heading !== "Note")
      .map((group) => (group.heading === "Place" && place ? { ...group, lines: place } : group)),
    checks: sheet.checks,
    questions: [...made.questions, ...context.assumed],
    mark: box && {
      as: "frame",
      height: box.foot.plus(box.height.dividedBy(2)),
      across: { left: box.left, width: box.width },
    },
  };
}
