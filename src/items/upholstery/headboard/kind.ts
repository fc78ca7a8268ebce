import type { ItemKind } from "../../itemKind.ts";
import { coverCloths } from "../coverCloths.ts";
import { headboardAllowances } from "./allowances.ts";
import { headboardSeen } from "./area.ts";
import { type HeadboardMade, makeHeadboard } from "./pieces.ts";
import { type HeadboardFields, headboardSchema } from "./schema.ts";

/** Upholstered headboards. */
export const headboardKind: ItemKind<HeadboardFields, HeadboardMade> = {
  kind: "headboard",
  synonyms: ["headboards", "bedhead", "bedheads"],
  words: {
    "en-US": { one: "headboard", many: "headboards" },
    "en-GB": { one: "headboard", many: "headboards" },
  },
  schema: headboardSchema,
  allowances: headboardAllowances,
  phase: 3,
  zone: () => "wall",
  trade: "upholstery",
  alsoMadeAs: ["upholsterer", "armchair"],
  cloths: (fields) => [
    ...coverCloths(fields),
    ...(fields["border-cloth"]
      ? ["border-top", "border-side"].map((surface) => ({
          surface,
          cloth: fields["border-cloth"] as string,
          keyPath: ["border-cloth"],
        }))
      : []),
  ],
  make: makeHeadboard,
  seen: headboardSeen,
};
