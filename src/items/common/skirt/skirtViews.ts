import { line, polyline, rect } from "../../../drawing/paths.ts";
import type { Dimension, Drawing, Shape } from "../../../drawing/shape.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { DrawingContext } from "../../itemDrawing.ts";
import { stroke } from "../clothFace.ts";
import { flatRun } from "./flatRun.ts";
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

const sumOf = (parts: readonly number[]): number => parts.reduce((n, x) => n + x, 0);

/** Widths or strips of a run from the left, in millimetres; of a width that is split, a half at each end. */
function partsOf(skirt: Skirt, run: Skirt["runs"][number]): number[] {
  if (run.strips) return run.strips.map((each) => each.toMm());
  const each = skirt.usableWidth.toMm();
  if (!flatRun(skirt, run)?.split) return Array.from({ length: run.widths }, () => each);
  return [each / 2, ...Array.from({ length: run.widths - 1 }, () => each), each / 2];
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
  const parts = partsOf(skirt, first);
  const n = parts.filter((_, at) => sumOf(parts.slice(0, at + 1)) <= MOST_FLAT_MM).length || 1;
  const width = sumOf(parts.slice(0, n));
  const top = skirt.top.toMm();
  const hem = skirt.hem.toMm();
  const broken = parts.length > n;
  const shapes: Shape[] = [
    broken
      ? { shape: "path", d: brokenEnd(width, cut), fill: { tone: "white" }, pen: "outline" }
      : { shape: "path", d: rect(0, 0, width, cut), fill: { tone: "white" }, pen: "outline" },
    stroke(line(0, top, width, top), "hidden"),
    stroke(line(0, cut - hem, width, cut - hem), "hidden"),
  ];
  for (let at = 1; at < n; at += 1) {
    const x = sumOf(parts.slice(0, at));
    shapes.push(stroke(line(x, 0, x, cut), "seam"));
  }
  shapes.push({
    shape: "sign",
    sign: "arrow",
    x: (parts[0] as number) * 0.2,
    y: cut * 0.6,
    turnDeg: skirt.sideways ? 0 : -90,
  });
  if (!broken)
    shapes.push({
      shape: "words",
      x: n > 1 ? (parts[0] as number) + (parts[1] as number) / 2 : width / 2,
      y: cut * 0.5,
      anchor: "middle",
      text: first.run.name,
    });
  // In its title: between joins there is no room for so many words.
  const shown = broken ? `: ${n} of ${first.widths} ${skirt.sideways ? "strips" : "widths"}` : "";
  const dimensions: Dimension[] = [
    {
      axis: "horizontal",
      from: 0,
      to: width,
      side: "bottom",
      level: 1,
      text: `${p(first.flat)} flat needed, ${p(flatRun(skirt, first)?.joined ?? first.joined)} joined`,
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
    title: `${parts.length > 1 ? "Flat, joined" : "Flat"}${shown}`,
    description: `${words.piece} flat: ${first.widths} ${skirt.sideways ? "strips" : "widths"} cut ${p(skirt.cut)} deep, ${p(first.joined)} joined.`,
  };
}
