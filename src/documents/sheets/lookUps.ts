import type { DrawingContext } from "../../items/itemDrawing.ts";
import type { ClothFacts, ObjectFacts } from "../../items/itemKind.ts";
import { objectFacts } from "../../room/objectFacts.ts";
import { clothFacts } from "../../swatches/clothFacts.ts";
import type { ProjectData } from "../projectData.ts";
import type { Language } from "../words/phrases.ts";

/** What drawings and sheets of items may look up: cloths and objects by card, as used in this project. */
export function lookUpsOf(data: ProjectData): DrawingContext {
  const cloth = (id: string): ClothFacts | null => {
    const card = data.records.cloths.get(id);
    return card ? clothFacts(card, data.swatches.get(id) ?? null) : null;
  };
  const object = (id: string): ObjectFacts | null =>
    objectFacts(data.records.objects.get(id) ?? null, {
      objectColours: (key) => (data.objects.get(key)?.colours ?? []).map((c) => c.hex),
    });
  return {
    units: data.studio.fields.units,
    language: data.studio.fields.language as Language,
    cloth,
    object,
  };
}
