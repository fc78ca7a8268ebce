import { quantitiesJson } from "../../src/quantities/text/toJson.ts";
import type { ClothJson } from "./checkPlan.ts";
import { quantitiesOf, type SmallStudio } from "./studioOf.ts";

export const CLOTHS = {
  fern: `cloth: Fern\nwidth: 137 cm\nrepeat: { up: 64 cm, across: 68.5 cm, match: straight }`,
  plain: `cloth: Plain\nwidth: 140 cm\nkind: plain`,
};
export const CUSHION = (title: string, count = 2, cloth = "fern") =>
  `  - cushion: ${title}\n    cloth: ${cloth}\n    count: ${count}\n    size: 50 cm x 50 cm\n`;
export const room = (items: string, more = "") => `room: A\n${more}items:\n${items}`;
export const MEASURED = "measured: { by: studio, on: 2026-10-02, checked: 2026-10-20 }\n";
export const cloths = (small: SmallStudio) =>
  (quantitiesJson(quantitiesOf(small)) as unknown as { cloths: ClothJson[] }).cloths;
