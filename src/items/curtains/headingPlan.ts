import { Length } from "../../units/length.ts";
import { printLength, type UnitSystem } from "../../units/printLength.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import { type GobletHeading, planGoblets } from "./gobletHeading.ts";
import type { Panel } from "./panel.ts";
import { planSlot, planTabs, type SlotHeading, type TabHeading } from "./poleHeadings.ts";
import type { CurtainsFields } from "./schema.ts";
import type { SFold, SFoldHeading } from "./sFold.ts";

export type HeadingPlan =
  | GobletHeading
  | TabHeading
  | SlotHeading
  | SFoldHeading
  | {
      readonly heading: "pinch-pleat";
      readonly pleats: number;
      readonly spaces: number;
      readonly space: Length;
      readonly takeUp: Length;
      readonly hooks: number;
      readonly depth: Length;
    }
  | {
      readonly heading: "pencil-pleat";
      readonly tape: Length;
      readonly hooks: number;
      readonly depth: Length;
    }
  | {
      readonly heading: "eyelet";
      readonly eyelets: number;
      readonly spacing: Length;
      readonly edge: Length;
      readonly depth: Length;
    };

/**
 * The heading of one curtain.
 * Pinch pleats: spaces = up(face / widest space), pleats = spaces + 1, take-up = (flat - finished) / pleats.
 * Eyelets: the least even number whose even spacing is no wider than asked, so that both edges turn to the wall.
 * Pencil pleats: tape as long as the flat panel and its two turned ends; hooks evenly, one more than the spaces.
 */
export function planHeading(
  fields: CurtainsFields,
  panel: Panel,
  sFold: SFold | null,
  context: ItemContext,
  notes: Notes,
): HeadingPlan {
  const p = (length: Length) => printLength(length, context.units);
  if (fields.heading === "goblet") return planGoblets(panel, fields.pleats, context, notes);
  if (fields.heading === "tab") return planTabs(panel, context, notes);
  if (fields.heading === "slot") return planSlot(context, notes);
  const depth = context.length("heading-depth");
  if (sFold) {
    const { carriers, spacing, clothPerCarrier } = sFold;
    const turned = context.length("tape-turn");
    const tape = panel.flat.plus(turned.times(2));
    return { heading: "s-fold", carriers, spacing, clothPerCarrier, tape, depth };
  }
  if (fields.heading === "pinch-pleat") {
    const most = context.length("pleat-space");
    const spaces = fields.pleats
      ? fields.pleats - 1
      : Math.max(1, panel.face.over(most).ceil().valueOf());
    const pleats = spaces + 1;
    const space = panel.face.dividedBy(spaces);
    const takeUp = panel.flat.minus(panel.finished).dividedBy(pleats);
    notes.working.push(
      {
        what: "Spaces a curtain",
        sum: fields.pleats
          ? `${fields.pleats} pleats asked − 1`
          : `${p(panel.face)} face ÷ ${p(most)}`,
        result: `${spaces} of ${p(space)}`,
        rounded: fields.pleats ? null : "up to whole spaces",
      },
      { what: "Pleats a curtain", sum: `${spaces} spaces + 1`, result: `${pleats}`, rounded: null },
      {
        what: "Take-up a pleat",
        sum: `(${p(panel.flat)} flat − ${p(panel.finished)} finished) ÷ ${pleats}`,
        result: p(takeUp),
        rounded: null,
      },
    );
    if (!isUsualTakeUp(takeUp, context.units)) {
      const usual = context.units === "inches" ? "4 to 7″" : "10 to 18 cm";
      notes.questions.push(
        `Each pleat takes up ${p(takeUp)}, where ${usual} is usual: is another number of pleats or another fullness wanted?`,
      );
    }
    return { heading: "pinch-pleat", pleats, spaces, space, takeUp, hooks: pleats + 2, depth };
  }
  if (fields.heading === "pencil-pleat") {
    const turn = context.length("tape-turn");
    const tape = panel.flat.plus(turn.times(2));
    const apart = context.length("hook-spacing");
    const hooks = panel.finished.over(apart).ceil().valueOf() + 1;
    notes.working.push(
      {
        what: "Heading tape a curtain",
        sum: `${p(panel.flat)} flat + 2 × ${p(turn)} turned in`,
        result: p(tape),
        rounded: null,
      },
      {
        what: "Hooks a curtain",
        sum: `${p(panel.finished)} finished ÷ ${p(apart)} + 1`,
        result: `${hooks}`,
        rounded: "up to whole spaces",
      },
    );
    return { heading: "pencil-pleat", tape, hooks, depth };
  }
  const edge = context.length("eyelet-edge");
  const eyelets = evenEyelets(panel.flat, edge, context.length("eyelet-spacing"));
  const spacing = panel.flat.minus(edge.times(2)).dividedBy(eyelets - 1);
  notes.working.push({
    what: "Eyelets a curtain",
    sum: `(${p(panel.flat)} flat − 2 × ${p(edge)} at the edges) ÷ ${p(context.length("eyelet-spacing"))} + 1`,
    result: `${eyelets}, ${p(spacing)} apart`,
    rounded: "up to an even number, so that both edges turn to the wall",
  });
  return { heading: "eyelet", eyelets, spacing, edge, depth };
}

/** The least even number of eyelets that stand no further apart than `most`. */
export function evenEyelets(flat: Length, edge: Length, most: Length): number {
  const between = flat.minus(edge.times(2));
  const least = between.isNegative() ? 2 : between.over(most).ceil().valueOf() + 1;
  return Math.max(2, least % 2 === 0 ? least : least + 1);
}

function isUsualTakeUp(takeUp: Length, units: UnitSystem): boolean {
  const [low, high] =
    units === "inches" ? [Length.inches(4), Length.inches(7)] : [Length.cm(10), Length.cm(18)];
  return !takeUp.isLessThan(low) && !takeUp.isMoreThan(high);
}
