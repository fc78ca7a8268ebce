import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { NOTHING_CUT, noted } from "../common/made.ts";
import { newNotes } from "../common/notes.ts";
import type { ItemContext, Made } from "../itemKind.ts";
import { cutsOf } from "./cuts.ts";
import { figuresOf } from "./figures.ts";
import { curtainsMaterials } from "./materials.ts";
import { onTrack } from "./onTrack.ts";
import { type CurtainsPlan, planCurtains } from "./plan.ts";
import type { CurtainsFields } from "./schema.ts";

/** Curtains as they are cut; the plan is null where something essential is not known, and a diagnostic says what. */
export interface CurtainsMade extends Made {
  readonly plan: CurtainsPlan | null;
}

/**
 * Curtains by the workroom's method: coverage, fullness, widths by their joined width, cut length with its repeat, heading, lining.
 * All lengths exact; widths and repeats go up, a track between walls down, each at its own named place.
 */
export function makeCurtains(fields: CurtainsFields, context: ItemContext): CurtainsMade {
  const notes = newNotes();
  const plan = planCurtains(fields, context, notes);
  if (plan === null) return { ...NOTHING_CUT, ...noted(notes, ["fire", "small-parts"]), plan };
  const cuts = cutsOf(fields, plan);
  const inAll = plan.widthsInAll.mul(plan.count);
  const cutsEach = plan.railroaded ? plan.coverage.curtains : plan.widthsInAll.ceil().valueOf();
  return {
    figures: figuresOf(plan, onTrack(fields)),
    cuts,
    materials: curtainsMaterials(fields, plan, context),
    handbook: handbookOf(plan),
    makingCounts: {
      item: new Fraction(plan.count),
      width: inAll,
      drop: new Fraction(cutsEach * plan.count),
    },
    ...noted(notes, [
      "fire",
      "small-parts",
      ...(plan.layers.length > 0 ? ["heavy-hanging"] : []),
      ...(context.window?.isDoor ? ["way-out"] : []),
    ]),
    plan,
  };
}

function handbookOf(plan: CurtainsPlan): { cloth: string; length: Length }[] {
  return [
    { cloth: plan.cloth.id, length: plan.handbook.total },
    ...plan.layers.map((layer) => ({ cloth: layer.cloth.id, length: layer.handbook.total })),
  ];
}
