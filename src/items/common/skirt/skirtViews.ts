import { line, polyline, rect } from "../../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../../drawing/shape.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { DrawingContext, SheetGroup } from "../../itemDrawing.ts";
import { stroke } from "../clothFace.ts";
import { sidewaysWords } from "../join/sideways.ts";
import { skirtFront } from "./skirtFront.ts";
import type { Skirt } from "./skirtRun.ts";

/** For the maker: one front as it hangs, and the strip as it is cut, joins and turnings in it. */
export function skirtWorkshop(
  skirt: Skirt,
  front: { readonly width: Length; readonly word: string; readonly corners: boolean },
  context: DrawingContext,
): Drawing[] {
  const p = (l: Length) => printLength(l, context.units);
  const [w, h] = [front.width.toMm(), skirt.drop.toMm()];
  const hung: Drawing = {
    widthMm: w,
    heightMm: h,
    shapes: [
      { shape: "path", d: rect(0, 0, w, h), fill: { tone: "white" }, pen: "outline" },
      ...skirtFront({
        style: skirt.style,
        fullness: skirt.fullness.valueOf(),
        width: w,
        drop: h,
        corners: front.corners,
      }),
    ],
    dimensions: [
      {
        axis: "horizontal",
        from: 0,
        to: w,
        side: "bottom",
        level: 1,
        text: `${p(front.width)} ${front.word}`,
      },
      {
        axis: "vertical",
        from: 0,
        to: h,
        side: "left",
        level: 1,
        text: `${p(skirt.drop)} finished drop`,
      },
    ],
    title: "As it hangs",
    description: `Skirt, ${p(skirt.drop)} finished drop, ${skirt.style}.`,
  };
  return [hung, stripView(skirt, p)];
}

/** The longest flat strip that a sheet shows large enough to read its turnings; a longer one is broken off. */
const MOST_FLAT_MM = 3200;

/** A strip whose right end goes on: a zigzag in place of its edge. */
function brokenEnd(width: number, height: number): string {
  const step = Math.min(60, width / 20);
  return polyline(
    [
      [0, 0],
      [width, 0],
      [width - step, height * 0.4],
      [width + step, height * 0.6],
      [width, height],
      [0, height],
    ],
    true,
  );
}

/** The first run flat, drawn short where it is long: widths with their joins, hem and top turning. */
export function stripView(
  skirt: Skirt,
  p: (l: Length) => string,
  words: { readonly hem: string; readonly top: string; readonly piece: string } = {
    hem: " hem",
    top: " top",
    piece: "Skirt",
  },
): Drawing {
  const first = skirt.runs[0] as Skirt["runs"][number];
  const cut = skirt.cut.toMm();
  const each = skirt.sideways ? first.joined.toMm() / first.widths : skirt.usableWidth.toMm();
  const n = Math.max(1, Math.min(first.widths, Math.floor(MOST_FLAT_MM / each)));
  const width = n * each;
  const top = skirt.top.toMm();
  const hem = skirt.hem.toMm();
  const broken = first.widths > n;
  const shapes: Shape[] = [
    broken
      ? { shape: "path", d: brokenEnd(width, cut), fill: { tone: "white" }, pen: "outline" }
      : { shape: "path", d: rect(0, 0, width, cut), fill: { tone: "white" }, pen: "outline" },
    stroke(line(0, top, width, top), "hidden"),
    stroke(line(0, cut - hem, width, cut - hem), "hidden"),
  ];
  for (let at = 1; at < n; at += 1) shapes.push(stroke(line(at * each, 0, at * each, cut), "seam"));
  shapes.push({
    shape: "sign",
    sign: "arrow",
    x: each * 0.2,
    y: cut * 0.6,
    turnDeg: skirt.sideways ? 0 : -90,
  });
  if (!broken)
    shapes.push({
      shape: "words",
      x: n > 1 ? each * 1.5 : width / 2,
      y: cut * 0.5,
      anchor: "middle",
      text: first.run.name,
    });
  // In its title: between joins there is no room for so many words.
  const parts = broken ? `: ${n} of ${first.widths} ${skirt.sideways ? "strips" : "widths"}` : "";
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: width,
      side: "bottom",
      level: 1,
      text: `${p(first.flat)} flat needed, ${p(first.joined)} joined`,
    },
    { axis: "vertical", from: 0, to: cut, side: "left", level: 1, text: `${p(skirt.cut)} cut` },
    {
      axis: "vertical",
      from: cut - hem,
      to: cut,
      side: "right",
      level: 1,
      text: `${p(skirt.hem)}${words.hem}`,
    },
    {
      axis: "vertical",
      from: 0,
      to: top,
      side: "right",
      level: 1,
      text: `${p(skirt.top)}${words.top}`,
    },
  ];
  return {
    widthMm: width,
    heightMm: cut,
    shapes,
    dimensions,
    title: `Flat, joined${parts}`,
    description: `${words.piece} flat: ${first.widths} ${skirt.sideways ? "strips" : "widths"} cut ${p(skirt.cut)} deep, ${p(first.joined)} joined.`,
  };
}

/** The groups of a skirt on its maker's sheet. */
export function skirtGroups(skirt: Skirt, context: DrawingContext): SheetGroup[] {
  const p = (l: Length) => printLength(l, context.units);
  const cuts = skirt.cuts.map((c) => `${c.count} × ${c.piece}, ${p(c.width)} × ${p(c.height)}.`);
  const made = {
    gathered: `Gathered, ${skirt.fullness.toString()} times; seams hidden in the gathers.`,
    "box-pleat": `Box pleats, ${skirt.fullness.toString()} times; every join at the back of a pleat.`,
    tailored:
      "Tailored: flat, a pleat at each corner; joins hidden in the pleats where they reach.",
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

function runLines(skirt: Skirt, p: (l: Length) => string): string[] {
  return skirt.runs.map((r) => {
    const over = r.joined.minus(r.flat);
    const name = skirt.runs.length > 1 ? `${r.run.name}: ` : "";
    const rest =
      over.compare(over.minus(over)) <= 0
        ? ""
        : skirt.style === "tailored"
          ? `; trim ${p(over)} off after joining`
          : `; the ${p(over)} over goes into the fullness`;
    return `${name}${p(r.run.length)} finished from ${p(r.flat)} flat, joined ${p(r.joined)}${rest}.`;
  });
}
