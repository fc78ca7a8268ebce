import type { ClothQuantity } from "../../quantities/quantityTypes.ts";
import type { ProjectData } from "../projectData.ts";
import { inItemWords } from "../words/inVocabulary.ts";
import type { Language } from "../words/phrases.ts";

/** From which side the widths of a curtain are counted: said once over the plan, not at each of them. */
const COUNTED = / from its left$/;

/** The cloth with its pieces as a maker reads them: in the studio's vocabulary, and without what is said once over the plan. */
export function spokenPieces(data: ProjectData, cloth: ClothQuantity): ClothQuantity {
  const language = data.studio.fields.language as Language;
  const kindOf = (room: string, item: string): string => {
    const items = data.rooms.find((r) => r.record.id === room)?.items;
    return items?.find((i) => i.record.id === item)?.kind.kind ?? "";
  };
  const pieces = cloth.plan.pieces.map((p) => ({
    ...p,
    piece: inItemWords(p.piece, kindOf(p.room, p.item), language).replace(COUNTED, ""),
  }));
  return { ...cloth, plan: { ...cloth.plan, pieces } };
}

/** What is said once of widths that are counted; empty where none are. */
export function countedWords({ plan }: ClothQuantity): string {
  return plan.pieces.some((p) => COUNTED.test(p.piece))
    ? " Widths of a curtain are counted from its left, seen from the room."
    : "";
}
