import { rect } from "../../drawing/paths.ts";
import type { Dimension, Shape } from "../../drawing/shape.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { WallpaperMade } from "./pieces.ts";

/** A border that is narrower than this has no room for its name, millimetres: the words column gives it with its height. */
const NAMED = 200;

/** Borders over the paper along a wall of a width in millimetres, each with how far its lower edge stands above the floor. */
export function borderBands(made: WallpaperMade, width: number, units: UnitSystem) {
  const height = made.height.toMm();
  const shapes: Shape[] = [];
  const dimensions: Dimension[] = [];
  for (const border of made.borders) {
    const foot = height - border.foot.toMm();
    const head = foot - border.width.toMm();
    shapes.push({
      shape: "path",
      d: rect(0, head, width, foot - head),
      fill: { tone: "paper" },
      pen: "outline",
    });
    if (foot - head >= NAMED)
      shapes.push({
        shape: "words",
        x: width / 2,
        y: (head + foot) / 2,
        text: border.name,
        anchor: "middle",
        dyPaper: 1.2,
      });
    if (border.at !== "ceiling")
      dimensions.push({
        axis: "vertical",
        from: foot,
        to: height,
        side: "left",
        level: 1,
        text: printLength(border.foot, units),
      });
  }
  return { shapes, dimensions };
}
