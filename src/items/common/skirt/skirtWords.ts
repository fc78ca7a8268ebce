import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { DrawingContext, SheetGroup } from "../../itemDrawing.ts";
import { sidewaysWords } from "../join/sideways.ts";
import { flatRun } from "./flatRun.ts";
import type { Skirt } from "./skirtRun.ts";

/** The groups of a skirt on its maker's sheet. */
export function skirtGroups(skirt: Skirt, context: DrawingContext): SheetGroup[] {
  const p = (l: Length) => printLength(l, context.units);
  const cuts = skirt.cuts.map((c) => `${c.count} × ${c.piece}, ${p(c.width)} × ${p(c.height)}.`);
  const made = {
    gathered: `Gathered, ${skirt.fullness.toString()} times; seams hidden in the gathers.`,
    "box-pleat": `Box pleats, ${skirt.fullness.toString()} times; every join at the back of a pleat.`,
    tailored: tailoredWords(skirt),
  }[skirt.style];
  return [
    {
      heading: "Cut",
      lines: [
        ...cuts,
        ...(skirt.sideways ? ["Cloth run sideways: the run lies along the bolt."] : []),
        `Of ${p(skirt.cut)}: ${p(skirt.drop)} drop, ${p(skirt.hem)} hem, ${p(skirt.top)} top.`,
        `Joins and turnings are included.`,
      ],
    },
    { heading: "Make", lines: [made, ...runLines(skirt, p)] },
    {
      heading: "Match",
      lines:
        skirt.cloth.repeat && !skirt.sideways && skirt.cloth.repeat.match !== "free"
          ? ["Pattern level all round, matched at every join."]
          : skirt.cloth.repeat && skirt.sideways
            ? [sidewaysWords(skirt.cloth, skirt.cut)]
            : [],
    },
  ].filter((group) => group.lines.length > 0);
}

/** How a tailored skirt lies at its corners. */
function tailoredWords(skirt: Skirt): string {
  if (skirt.runs.every((r) => r.run.corners === 0)) return "Tailored: flat, without pleats.";
  const inPleats = skirt.runs.every((r) => r.strips?.length === r.run.corners + 1);
  return `Tailored: flat, a pleat at each corner; ${inPleats ? "strips joined in the middle of the pleats." : "joins hidden in the pleats where they reach."}`;
}

function runLines(skirt: Skirt, p: (l: Length) => string): string[] {
  const many = skirt.runs.length > 1;
  const lines = skirt.runs.map((r) => {
    const seen = flatRun(skirt, r);
    const joined = seen?.joined ?? r.joined;
    const over = joined.minus(r.flat);
    const name = many ? `${r.run.name}: ` : "";
    const rest =
      over.isZero() || over.isNegative()
        ? ""
        : skirt.style === "tailored"
          ? `; trim ${p(over)} off after joining${seen ? ", half at each end" : ""}`
          : `; the ${p(over)} over goes into the fullness`;
    const made = r.widths > 1 ? `, joined ${p(joined)}` : "";
    return `${name}${p(r.run.length)} finished from ${p(r.flat)} flat${made}${rest}.`;
  });
  const split = skirt.runs.filter((r) => flatRun(skirt, r)?.split).map((r) => r.run.name);
  if (split.length === 0) return lines;
  const where = many ? ` of ${split.join(", ")}` : "";
  return [
    ...lines,
    `One width${where} is split, a half at each end, so that no join stands in the middle.`,
  ];
}
