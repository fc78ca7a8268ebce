import Fraction from "fraction.js";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { finestStep } from "../common/finestStep.ts";
import type { Notes } from "../common/notes.ts";
import type { ItemContext } from "../itemKind.ts";
import type { Panel } from "./panel.ts";

/** Half the way round a pole for each unit of its thickness: π ÷ 2 taken as 11/7, a little more than it is. */
const HALF_ROUND = new Fraction(11, 7);

/** Tabs: loops of the face cloth that go over the pole. */
export interface TabHeading {
  readonly heading: "tab";
  readonly tabs: number;
  /** Between two tabs' centres, flat. */
  readonly spacing: Length;
  readonly tabWidth: Length;
  /** One strip: twice the tab's width and a seam turning at each long edge. */
  readonly stripWidth: Length;
  readonly stripLength: Length;
  readonly depth: Length;
}

/** A slot (rod pocket): the pole runs through the heading itself. */
export interface SlotHeading {
  readonly heading: "slot";
  /** Standing above the pole. */
  readonly frill: Length;
  readonly pocket: Length;
  /** Frill and pocket together. */
  readonly depth: Length;
}

/**
 * Pocket = half the way round the pole + ease, up to what can be marked; the turn at the top is frill + pocket + the raw edge
 * turned under, since the drop already covers the front (common practice, no source).
 */
export function slotSizes(context: ItemContext): SlotHeading & { readonly turn: Length } {
  const frill = context.length("slot-frill");
  const pocket = context
    .length("pole-thickness")
    .times(HALF_ROUND)
    .plus(context.length("slot-ease"))
    .upTo(finestStep(context.units));
  const depth = frill.plus(pocket);
  return { heading: "slot", frill, pocket, depth, turn: depth.plus(context.length("slot-turn")) };
}

/** Plans a slot heading and shows its working. */
export function planSlot(context: ItemContext, notes: Notes): SlotHeading {
  const p = (length: Length) => printLength(length, context.units);
  const { frill, pocket, depth } = slotSizes(context);
  const pole = context.length("pole-thickness");
  notes.working.push({
    what: "Slot for the pole, laid flat",
    sum: `${p(pole)} pole × 11/7, half the way round + ${p(context.length("slot-ease"))} ease`,
    result: p(pocket),
    rounded: `up to ${context.units === "inches" ? "1/8″" : "1 mm"}`,
  });
  notes.questions.push(`How thick is the pole that goes through the slot? ${p(pole)} is assumed.`);
  return { heading: "slot", frill, pocket, depth };
}

/**
 * One tab at each edge and the rest evenly, no further apart than asked: tabs = up((flat − tab) ÷ spacing) + 1. A strip is as long
 * as the way over the pole (twice the tab's drop and half the way round) and a turning at each end (common practice, no source).
 */
export function planTabs(panel: Panel, context: ItemContext, notes: Notes): TabHeading {
  const p = (length: Length) => printLength(length, context.units);
  const tabWidth = context.length("tab-width");
  const most = context.length("tab-spacing");
  const between = panel.flat.minus(tabWidth);
  const spaces = between.isNegative() ? 1 : Math.max(1, between.over(most).ceil().valueOf());
  const spacing = between.dividedBy(spaces);
  const join = context.length("join");
  const drop = context.length("tab-drop");
  const pole = context.length("pole-thickness");
  const loop = drop.times(2).plus(pole.times(HALF_ROUND)).upTo(finestStep(context.units));
  const stripWidth = tabWidth.plus(join).times(2);
  const stripLength = loop.plus(join.times(2));
  notes.working.push(
    {
      what: "Tabs a curtain",
      sum: `(${p(panel.flat)} flat − ${p(tabWidth)} tab) ÷ ${p(most)} + 1`,
      result: `${spaces + 1}, ${p(spacing)} between centres`,
      rounded: "up to whole spaces",
    },
    {
      what: "Tab, cut length",
      sum: `2 × ${p(drop)} drop + ${p(pole)} pole × 11/7, half the way round + 2 × ${p(join)} turnings`,
      result: p(stripLength),
      rounded: `loop up to ${context.units === "inches" ? "1/8″" : "1 mm"}`,
    },
    {
      what: "Tab, cut width",
      sum: `2 × (${p(tabWidth)} finished + ${p(join)} turning)`,
      result: p(stripWidth),
      rounded: null,
    },
  );
  notes.questions.push(`How thick is the pole that the tabs go over? ${p(pole)} is assumed.`);
  return {
    heading: "tab",
    tabs: spaces + 1,
    spacing,
    tabWidth,
    stripWidth,
    stripLength,
    depth: context.length("heading-depth"),
  };
}
