import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import type { BlindSize } from "../common/blindSize.ts";
import { clothWidth, narrowerThanJoins } from "../common/join/clothWidth.ts";
import { planStrips, type Strips } from "../common/join/joinStrips.ts";
import type { Notes } from "../common/notes.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { BlindFields } from "./schema.ts";
import type { Sections } from "./sections.ts";

/** A lining or interlining as it is cut. */
export interface BlindLayer {
  readonly layer: "lining" | "interlining" | "blackout";
  /** A blackout counts among the linings wherever surfaces are told apart. */
  readonly surface: "lining" | "interlining";
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly width: Length;
  readonly height: Length;
  readonly because: string;
}

/** What lies behind the face is cut by. */
export interface BehindBlind {
  readonly size: BlindSize;
  readonly sections: Sections;
  readonly top: Length;
  readonly join: Length;
}

/** The layers behind the face that are asked for; one whose cloth has no width is left out, with a diagnostic. */
export function layersOf(
  fields: BlindFields,
  behind: BehindBlind,
  context: ItemContext,
  notes: Notes,
): BlindLayer[] {
  return (["interlining", "blackout", "lining"] as const).flatMap((layer): BlindLayer[] => {
    const id = fields[layer];
    const cloth = id ? context.cloth(id) : null;
    if (!cloth) return [];
    // Too little lining cannot be mended: one that may need a join is not guessed to need none.
    const usableWidth = clothWidth(cloth, layer, "its joins cannot be planned", context, notes);
    if (usableWidth === null) return [];
    if (!usableWidth.isMoreThan(behind.join.times(2))) {
      narrowerThanJoins(cloth, usableWidth, behind.join, context, notes, layer);
      return [];
    }
    return [{ ...layerOf(layer, cloth, behind, context, notes), usableWidth }];
  });
}

/** A lining with its turnings and rod pockets, or an interlining or a blackout of the finished size. */
function layerOf(
  layer: BlindLayer["layer"],
  cloth: ClothFacts,
  { size, sections, top }: BehindBlind,
  context: ItemContext,
  notes: Notes,
): Omit<BlindLayer, "usableWidth"> {
  const p = (length: Length) => printLength(length, context.units);
  if (layer !== "lining") {
    const surface = layer === "blackout" ? "lining" : layer;
    return {
      layer,
      surface,
      cloth,
      width: size.width,
      height: size.drop,
      because: "finished size",
    };
  }
  const inside = context.length("lining-in");
  const turn = context.length("lining-turn");
  const pocket = context.length("rod-pocket");
  const width = size.width.minus(inside.times(2)).plus(turn.times(2));
  const pockets = pocket.times(sections.rods);
  const height = size.drop.plus(top).plus(pockets).plus(turn);
  const because = `${p(size.drop)} drop + ${p(top)} top + ${sections.rods} × ${p(pocket)} rod pockets + ${p(turn)} turn`;
  notes.working.push(
    {
      what: "Lining, cut width",
      sum: `${p(size.width)} − 2 × ${p(inside)} + 2 × ${p(turn)} turnings`,
      result: p(width),
      rounded: null,
    },
    { what: "Lining, cut length", sum: because, result: p(height), rounded: null },
  );
  return { layer, surface: "lining", cloth, width, height, because };
}

/** A lining is joined as the face is. */
export function layerStrips(layer: BlindLayer, join: Length): Strips {
  return planStrips(layer.width, layer.usableWidth, join);
}
