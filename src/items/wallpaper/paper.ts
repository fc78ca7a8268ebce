import type { Length } from "../../units/length.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { WallpaperFields } from "./schema.ts";
import type { StripAsk } from "./strips.ts";

/** The paper, how it is hung, and what is allowed for. */
export interface Paper {
  readonly card: ClothFacts | null;
  readonly roll: ClothFacts["roll"];
  /** Null where there is nothing to match. */
  readonly repeat: ClothFacts["repeat"];
  readonly hanging: "in-turn" | "two-stocks";
  /** Cut off a strip at head and foot, together. */
  readonly trim: Length;
  readonly spare: number;
  /** Side of the square that an opening must exceed for strips to be left out at it. */
  readonly large: Length;
}

export function paperOf(fields: WallpaperFields, context: ItemContext): Paper {
  const card = context.cloth(fields.cloth);
  return {
    card,
    roll: card?.roll ?? null,
    repeat: card?.repeat && card.repeat.match !== "free" ? card.repeat : null,
    hanging: fields.hanging ?? "in-turn",
    trim: context.length("trim"),
    spare: fields["spare-rolls"] ?? context.count("spare-rolls"),
    large: context.length("large-opening"),
  };
}

/** What the strips are reckoned by; null where the roll's size is not known. */
export function stripAskOf({ roll, repeat, hanging }: Paper, cut: Length): StripAsk | null {
  if (!roll) return null;
  const match = repeat?.match === "half-drop" ? "half-drop" : "straight";
  return {
    cut,
    rollLength: roll.length,
    repeat: repeat ? { up: repeat.up, match } : null,
    hanging,
  };
}
