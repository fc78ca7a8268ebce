import type { ItemKind } from "../itemKind.ts";
import { panelledWallAllowances } from "./allowances.ts";
import { panelledWallSeen } from "./area.ts";
import { makePanelledWall, type PanelledWallMade } from "./pieces.ts";
import { type PanelledWallFields, panelledWallSchema } from "./schema.ts";

/** Walls set out in panels, painted or with cloth stretched in them. */
export const panelledWallKind: ItemKind<PanelledWallFields, PanelledWallMade> = {
  kind: "panelled-wall",
  synonyms: ["panelled-walls", "paneled-wall", "paneled-walls", "panelling", "paneling"],
  words: {
    "en-US": { one: "paneled wall", many: "paneled walls" },
    "en-GB": { one: "panelled wall", many: "panelled walls" },
  },
  schema: panelledWallSchema,
  allowances: panelledWallAllowances,
  phase: 2,
  zone: () => "wall",
  trade: "panelling",
  isWall: true,
  alsoMadeAs: ["paneling", "joinery", "carpentry", "joiner", "carpenter"],
  cloths: (fields) =>
    fields.cloth ? [{ surface: "panel", cloth: fields.cloth, keyPath: ["cloth"] }] : [],
  make: makePanelledWall,
  seen: panelledWallSeen,
};
