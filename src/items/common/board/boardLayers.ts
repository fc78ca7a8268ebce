import { capital } from "../../../units/capital.ts";
import type { Length } from "../../../units/length.ts";
import { printLength } from "../../../units/printLength.ts";
import type { ClothFacts, ItemContext, ItemCut } from "../../itemKind.ts";
import { isPatterned } from "../join/centredMotif.ts";
import { clothWidth, narrowerThanJoins } from "../join/clothWidth.ts";
import { acrossCuts } from "../join/joinedAcross.ts";
import { planStrips, type Strips } from "../join/joinStrips.ts";
import type { Notes } from "../notes.ts";

/** A lining, interlining or padding behind what hangs from a board, in one piece or joined as the face is. */
export interface BoardLayer {
  /** Its name on the cutting plan: `lining`, `padding`. */
  readonly piece: string;
  readonly surface: "lining" | "interlining";
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly width: Length;
  readonly height: Length;
  readonly strips: Strips;
  readonly because: string;
}

/** A layer that is asked for: the field that names its cloth, and its size as it is cut. */
export interface LayerAsk {
  /** The field that names it, where a cloth without a width is shown: `padding`. */
  readonly key: string;
  readonly surface: BoardLayer["surface"];
  /** The cloth that is written there; none where nothing is. */
  readonly cloth: string | undefined;
  /** What a missing width leaves open, as the end of a sentence. */
  readonly unknown: string;
  /** Its size, with the reason for it; looked up only where the layer is made. */
  readonly size: () => Pick<BoardLayer, "width" | "height" | "because">;
}

/** The layers that are made, each with the line of its working; one whose cloth has no width is left out, with a diagnostic. */
export function boardLayers(
  asked: readonly LayerAsk[],
  join: Length,
  context: ItemContext,
  notes: Notes,
): BoardLayer[] {
  const p = (length: Length) => printLength(length, context.units);
  return asked.flatMap(({ key, surface, cloth: id, unknown, size }): BoardLayer[] => {
    const cloth = id ? context.cloth(id) : null;
    const usableWidth = clothWidth(cloth, key, unknown, context, notes);
    if (cloth === null || usableWidth === null) return [];
    if (!usableWidth.isMoreThan(join.times(2))) {
      narrowerThanJoins(cloth, usableWidth, join, context, notes, key);
      return [];
    }
    const { width, height, because } = size();
    notes.working.push({
      what: `${capital(key)}, cut`,
      sum: because,
      result: `${p(width)} × ${p(height)}`,
      rounded: null,
    });
    const strips = planStrips(width, usableWidth, join);
    return [{ piece: key, surface, cloth, usableWidth, width, height, strips, because }];
  });
}

/** The cuts of every layer, for so many items alike; plain cloth, so no pattern is brought to match. */
export function layerCuts(layers: readonly BoardLayer[], count: number): ItemCut[] {
  return layers.flatMap((layer) =>
    acrossCuts({
      piece: layer.piece,
      surface: layer.surface,
      cloth: layer.cloth.id,
      strips: layer.strips,
      cutWidth: layer.width,
      usableWidth: layer.usableWidth,
      height: layer.height,
      count,
      across: { how: "free" },
      mayTurn: layer.cloth.mayTurn,
      patterned: isPatterned(layer.cloth),
      along: () => ({ how: "free" }),
      because: layer.because,
    }),
  );
}

/** What the handbook makes of the layers: whole widths of each, one below the other. */
export function layersByHandbook(
  layers: readonly BoardLayer[],
  count: number,
): { readonly cloth: string; readonly length: Length }[] {
  return layers.map((layer) => ({
    cloth: layer.cloth.id,
    length: layer.height.times(layer.strips.widths * count),
  }));
}
