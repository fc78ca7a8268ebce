import { line, rect } from "../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../drawing/shape.ts";
import { printLength } from "../../units/printLength.ts";
import type { DrawingContext } from "../itemDrawing.ts";
import { seams } from "./elevation.ts";
import type { BlindMade } from "./pieces.ts";
import type { BlindFields } from "./schema.ts";

/** The blind let down, from the front, with its rods, sections and joins. */
export function blindWorkshop(
  fields: BlindFields,
  made: BlindMade,
  context: DrawingContext,
): Drawing[] {
  const { plan } = made;
  if (plan === null) return [];
  const p = (length: Parameters<typeof printLength>[0]) => printLength(length, context.units);
  const width = plan.size.width.toMm();
  const drop = plan.size.drop.toMm();
  const { sections } = plan;
  const shapes: Shape[] = [
    { shape: "path", d: rect(0, 0, width, drop), fill: { tone: "white" }, pen: "outline" },
    {
      shape: "path",
      d: line(0, plan.headrail.toMm(), width, plan.headrail.toMm()),
      fill: null,
      pen: "edge",
    },
  ];
  const short = (width - plan.rodLength.toMm()) / 2;
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: width,
      side: "bottom",
      level: 1,
      text: `${p(plan.size.width)} finished width`,
    },
    {
      axis: "vertical",
      from: 0,
      to: drop,
      side: "left",
      level: 1,
      text: `${p(plan.size.drop)} finished drop`,
    },
  ];
  // The folds of a hobbled blind hang over their tapes: a second line under each shows the loop.
  if (plan.hobble) {
    const high = sections.section.toMm();
    for (let at = 1; at < sections.sections; at += 1) {
      const y = plan.headrail.toMm() + at * high;
      shapes.push({
        shape: "path",
        d: line(0, y + high * 0.14, width, y + high * 0.14),
        fill: null,
        pen: "fold",
      });
    }
  }
  let below = drop;
  for (const height of sections.rodHeights) {
    const y = drop - height.toMm();
    shapes.push({ shape: "path", d: line(short, y, width - short, y), fill: null, pen: "hidden" });
    const text = below === drop ? p(sections.section) : p(sections.section.times(2));
    dimensions.push({ axis: "vertical", from: y, to: below, side: "right", level: 1, text });
    below = y;
  }
  if (sections.rods > 0) {
    dimensions.push({
      axis: "vertical",
      from: 0,
      to: below,
      side: "right",
      level: 1,
      text: p(sections.topRodFromTop),
    });
  }
  dimensions.push({
    axis: "vertical",
    from: 0,
    to: plan.headrail.toMm(),
    side: "right",
    level: 2,
    text: p(plan.headrail),
  });
  const joins = seams(plan);
  for (const x of joins)
    shapes.push({ shape: "path", d: line(x, 0, x, drop), fill: null, pen: "seam" });
  const [firstJoin] = joins;
  const lastJoin = joins.at(-1);
  if (firstJoin !== undefined && lastJoin !== undefined && lastJoin > firstJoin) {
    const side = plan.strips.strip?.minus(plan.join).minus(plan.sideTurn);
    const middle = plan.strips.middle.minus(plan.join.times(2)).times(plan.strips.wholes);
    dimensions.push({
      axis: "horizontal",
      from: firstJoin,
      to: lastJoin,
      side: "top",
      level: 1,
      text: p(middle),
    });
    if (side) {
      dimensions.push(
        { axis: "horizontal", from: 0, to: firstJoin, side: "top", level: 1, text: p(side) },
        { axis: "horizontal", from: lastJoin, to: width, side: "top", level: 1, text: p(side) },
      );
    }
  }
  const { repeat } = plan.cloth;
  if (repeat && repeat.match !== "free") {
    shapes.push({
      shape: "path",
      d: line(width / 2, -0, width / 2, drop),
      fill: null,
      pen: "centre",
    });
    shapes.push({
      shape: "sign",
      sign: "arrow",
      x: width * 0.25,
      // Between the two lowest rods, so that it lies on the cloth whole.
      y: drop - Math.min(2 * sections.section.toMm(), drop / 2),
      turnDeg: -90,
    });
  }
  return [
    {
      widthMm: width,
      heightMm: drop,
      shapes,
      dimensions,
      title: `${fields.blind}, front view, let down`,
      description: `${plan.hobble ? "Hobbled" : "Roman"} blind: ${dimensions.map((d) => d.text).join("; ")}; ${sections.rods} rods.`,
    },
  ];
}
