import type { Binding } from "./binding.ts";
import { drawDimensions, type Inset } from "./dimensions.ts";
import { drawShape } from "./drawShape.ts";
import { figure } from "./paths.ts";
import { Pencase } from "./pencase.ts";
import type { DrawingStyle } from "./pens.ts";
import type { Drawing } from "./shape.ts";
import { escapeText } from "./words.ts";
import { wordsReach } from "./wordsReach.ts";

export interface RenderOptions {
  /** Paper millimetres for one real millimetre: 1/15. */
  readonly scale: number;
  readonly bindings: (surface: string) => Binding;
  /** Cloth for boards, workshop for makers (black on white), grey for the room in light and dark. */
  readonly style: DrawingStyle;
  readonly dimensions: boolean;
  /** Pens so much finer than usual, for drawings no larger than a hand; 1 where nothing is said. */
  readonly penShare?: number;
  /** Of what is not there yet: the colour behind it, and the ink of its outlines. */
  readonly toCome?: { readonly ground: string; readonly ink: string };
  /** Begins every id, so that several drawings stand on one page. */
  readonly idPrefix: string;
}

export interface RenderedDrawing {
  /** An inline SVG whose viewBox is in millimetres of paper; the drawing's (0, 0) is the viewBox's (0, 0). */
  readonly svg: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** What pens and dimensions take beyond the drawing's own box at each side, in millimetres of paper. */
  readonly insetMm: Inset;
}

/** Room for half a pen and a text's foot. */
const EDGE_MM = 0.5;

/** How much paper a drawing takes at a scale with its dimensions, in millimetres, without drawing it. */
export function paperSize(
  drawing: Drawing,
  { scale, style }: Pick<RenderOptions, "scale" | "style">,
): { widthMm: number; heightMm: number } {
  const { insetMm } = measured(drawing, scale, style, true);
  return {
    widthMm: drawing.widthMm * scale + insetMm.left + insetMm.right,
    heightMm: drawing.heightMm * scale + insetMm.top + insetMm.bottom,
  };
}

/** The dimensions as SVG, and what they, pens, and on a maker's sheet words, take beyond the box. */
function measured(
  drawing: Drawing,
  scale: number,
  style: DrawingStyle,
  dimensions: boolean,
): { svg: string; insetMm: Inset } {
  const size = { width: drawing.widthMm * scale, height: drawing.heightMm * scale };
  const { svg, inset } = drawDimensions(dimensions ? drawing.dimensions : [], size, scale, style);
  const words =
    dimensions && style === "workshop" ? wordsReach(drawing.shapes, size, scale) : inset;
  const reach = (side: keyof Inset) => Math.max(inset[side], words[side]) + EDGE_MM;
  return {
    svg,
    insetMm: {
      left: reach("left"),
      top: reach("top"),
      right: reach("right"),
      bottom: reach("bottom"),
    },
  };
}

/**
 * Draws a drawing to scale as SVG, all vectors but the cloths' own tiles. Tiles are explicit pictures clipped to each shape, never
 * an SVG pattern, which browsers print blurred (print design 5).
 */
export function renderDrawing(drawing: Drawing, options: RenderOptions): RenderedDrawing {
  const { scale, style, idPrefix } = options;
  if (!(scale > 0)) throw new Error(`A scale must be more than nothing, not ${scale}`);
  const pencase = new Pencase(
    style,
    scale,
    options.bindings,
    idPrefix,
    options.penShare,
    options.toCome,
  );
  const size = { width: drawing.widthMm * scale, height: drawing.heightMm * scale };
  const body = drawing.shapes.map((shape) => drawShape(shape, pencase)).join("");
  const { svg: around, insetMm } = measured(drawing, scale, style, options.dimensions);
  const widthMm = size.width + insetMm.left + insetMm.right;
  const heightMm = size.height + insetMm.top + insetMm.bottom;
  const svg = [
    `<svg xmlns="http://www.w3.org/2000/svg" class="drawing drawing-${style}" role="img" aria-labelledby="${idPrefix}-t ${idPrefix}-d"`,
    ` width="${figure(widthMm)}mm" height="${figure(heightMm)}mm" viewBox="${figure(-insetMm.left)} ${figure(-insetMm.top)} ${figure(widthMm)} ${figure(heightMm)}"`,
    ` font-family="'Alegreya Sans', sans-serif" style="font-feature-settings:'lnum','tnum','kern'">`,
    `<title id="${idPrefix}-t">${escapeText(drawing.title)}</title><desc id="${idPrefix}-d">${escapeText(drawing.description)}</desc>`,
    pencase.definitions(),
    `<g transform="scale(${Number(scale.toPrecision(9))})" stroke-linecap="round">${body}</g>`,
    around ? `<g class="dimensions">${around}</g>` : "",
    "</svg>",
  ].join("");
  return { svg, widthMm, heightMm, insetMm };
}
