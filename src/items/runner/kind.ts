import { flatCloths } from "../common/flat/flatCover.ts";
import type { ItemKind } from "../itemKind.ts";
import { runnerAllowances } from "./allowances.ts";
import { runnerSeen } from "./area.ts";
import { makeRunner, type RunnerMade } from "./pieces.ts";
import { type RunnerFields, runnerSchema } from "./schema.ts";

/** Bed and table runners. */
export const runnerKind: ItemKind<RunnerFields, RunnerMade> = {
  kind: "runner",
  synonyms: ["runners", "bed-runner", "bed-runners", "table-runner", "table-runners"],
  words: {
    "en-US": { one: "runner", many: "runners" },
    "en-GB": { one: "runner", many: "runners" },
  },
  schema: runnerSchema,
  allowances: runnerAllowances,
  phase: 1,
  zone: (_, made) => (made?.plan?.on === "table" ? "table" : "seat"),
  trade: "bedding",
  alsoMadeAs: ["curtains", "cushion"],
  cloths: flatCloths,
  make: makeRunner,
  seen: runnerSeen,
};
