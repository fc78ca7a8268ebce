import { renderDrawing } from "../../drawing/renderDrawing.ts";
import type { Drawing } from "../../drawing/shape.ts";
import { ITEM_DRAWINGS } from "../../items/drawings.ts";
import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { ItemData } from "../projectData.ts";
import type { Markup } from "../words/marks.ts";

/** A workshop drawing fits this box on paper, millimetres. */
const DRAWING_WIDTH = 118;
const DRAWING_HEIGHT = 102;
/** What stands below the views. */
const BELOW_HEIGHT = 50;
const SCALES = [1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 16, 20, 24, 25, 30, 32, 36, 40, 48, 50];

/** A drawing at the largest of the usual scales at which it and its dimensions fit the box. */
export function workshopDrawing(
  drawing: Drawing,
  idPrefix: string,
  width = DRAWING_WIDTH,
  height = DRAWING_HEIGHT,
): { svg: string; scale: number } {
  const at = (scale: number) =>
    renderDrawing(drawing, {
      scale: 1 / scale,
      bindings: () => null,
      style: "workshop",
      dimensions: true,
      idPrefix,
    });
  for (const scale of SCALES) {
    if (drawing.widthMm / scale > width || drawing.heightMm / scale > height) continue;
    const rendered = at(scale);
    if (rendered.widthMm <= width && rendered.heightMm <= height)
      return { svg: rendered.svg, scale };
  }
  return { svg: at(60).svg, scale: 60 };
}

/** The workshop drawings of an item, each at the largest scale that keeps the item to its page. */
export function workshopDrawings(
  item: ItemData,
  context: DrawingContext,
  prefix: string,
): { svg: Markup; words: string }[] {
  const entry = ITEM_DRAWINGS.find((d) => d.kind === item.kind.kind);
  if (!entry) return [];
  const all = entry.workshop(item.record.fields as never, item.made as never, context);
  const views = all.filter((d) => !d.below);
  const beside = views.length > 1 && views.every((d) => d.heightMm > d.widthMm * 0.6);
  const width = beside ? (DRAWING_WIDTH - 4) / views.length : DRAWING_WIDTH;
  // With pieces laid flat below them the views are smaller, so that an item keeps to its page.
  const below = views.length < all.length;
  const heights = (at: number): number => {
    if (beside) return below ? 72 : 92;
    if (at > 0) return below ? 34 : 40;
    return views.length === 1 ? DRAWING_HEIGHT : below ? 56 : 66;
  };
  // Drawings that stand side by side share one scale, the smaller one's.
  const scales = views.map((d, at) => workshopDrawing(d, "", width, heights(at)).scale);
  const shared = beside ? Math.max(...scales) : null;
  return [...views, ...all.filter((d) => d.below)].map((drawing, at) => {
    const scale = drawing.below
      ? workshopDrawing(drawing, "", DRAWING_WIDTH, BELOW_HEIGHT).scale
      : (shared ?? (scales[at] as number));
    const { svg } = renderDrawing(drawing, {
      scale: 1 / scale,
      bindings: () => null,
      style: "workshop",
      dimensions: true,
      idPrefix: `${prefix}-d${at}`,
    });
    return { svg: { html: svg }, words: `${drawing.title}, one to ${scale}` };
  });
}
