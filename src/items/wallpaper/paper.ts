import type { Length } from "../../units/length.ts";
import { COLUMN_ROUNDING, columnsAcross } from "../common/join/matchedTurning.ts";
import type { ClothFacts, ItemContext } from "../itemKind.ts";
import type { WallpaperFields } from "./schema.ts";
import type { StripAsk } from "./strips.ts";

/** The paper, how it is hung, and what is allowed for. */
export interface Paper {
  readonly card: ClothFacts | null;
  readonly roll: ClothFacts["roll"];
  /** How its strips meet; null where there is nothing to match. A half-drop that falls inside the roll's width meets straight. */
  readonly repeat: ClothFacts["repeat"];
  /** True where the card says half-drop, and by its repeat across the strips hang level. */
  readonly dropInside: boolean;
  readonly hanging: "in-turn" | "two-stocks";
  /** Cut off a strip at head and foot, together. */
  readonly trim: Length;
  readonly spare: number;
  /** Side of the square that an opening must exceed for strips to be left out at it. */
  readonly large: Length;
}

export function paperOf(fields: WallpaperFields, context: ItemContext): Paper {
  const card = context.cloth(fields.cloth);
  const repeat = card?.repeat && card.repeat.match !== "free" ? card.repeat : null;
  const dropInside = card !== null && dropsInside(card);
  return {
    card,
    roll: card?.roll ?? null,
    repeat: repeat && dropInside ? { ...repeat, match: "straight" } : repeat,
    dropInside,
    hanging: fields.hanging ?? "in-turn",
    trim: context.length("trim"),
    spare: fields["spare-rolls"] ?? context.count("spare-rolls"),
    large: context.length("large-opening"),
  };
}

/** True where an even number of a half-drop's columns stands in a strip: the next strip's first column hangs level with this one's. */
function dropsInside(card: ClothFacts): boolean {
  const { repeat, roll } = card;
  if (!roll || repeat?.match !== "half-drop") return false;
  const columns = columnsAcross({ ...card, usableWidth: roll.width, statedWidth: roll.width });
  if (!columns || columns.whole === 0 || columns.whole % 2 !== 0) return false;
  return columns.all.sub(columns.whole).abs().compare(COLUMN_ROUNDING) <= 0;
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
