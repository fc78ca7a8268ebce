import Fraction from "fraction.js";
import { diagnostic } from "../../diagnostics/diagnostic.ts";
import { Length } from "../../units/length.ts";
import { printLength, printSize } from "../../units/printLength.ts";
import { boughtPieces } from "../boughtLength.ts";
import { centredPlace } from "../centredMotif.ts";
import type { AcrossMatch, AlongMatch, ClothFacts, ItemContext, ItemCut, Made, MaterialNeed } from "../itemKind.ts";
import { newNotes, type Notes } from "../notes.ts";
import { type HandbookCut, handbookCut, selvedgeMatch } from "../selvedgeMatch.ts";
import { type BlindSize, measureBlind } from "./measure.ts";
import type { BlindFields } from "./schema.ts";
import { chooseSections, type Sections } from "./sections.ts";
import { planStrips, type Strips } from "./strips.ts";

/** A lining or interlining as it is cut. */
export interface BlindLayer {
  readonly surface: "lining" | "interlining";
  readonly cloth: ClothFacts;
  readonly width: Length;
  readonly height: Length;
  readonly because: string;
}

/** Every size that the drawing and the sheet of a Roman blind need. */
export interface BlindPlan {
  readonly size: BlindSize;
  readonly cloth: ClothFacts;
  readonly usableWidth: Length;
  readonly sideTurn: Length;
  readonly top: Length;
  readonly bottom: Length;
  readonly join: Length;
  readonly headrail: Length;
  readonly cutWidth: Length;
  readonly plainCut: Length;
  readonly handbook: HandbookCut;
  readonly strips: Strips;
  readonly sections: Sections;
  readonly rodLength: Length;
  readonly layers: readonly BlindLayer[];
  readonly motifCentred: boolean;
  readonly shifts: boolean;
  readonly operation: "cordless" | "cord" | "chain" | "motor";
  readonly count: number;
}

export interface BlindMade extends Made {
  readonly plan: BlindPlan | null;
}

/**
 * A Roman blind: cut = finished size and turnings; wider than the cloth, whole widths in the middle and equal strips at the sides;
 * folds in an odd number of equal sections. Between walls sizes go down, cuts go up to whole repeats.
 */
export function makeBlind(fields: BlindFields, context: ItemContext): BlindMade {
  const notes = newNotes();
  const plan = planBlind(fields, context, notes);
  const shared = {
    working: notes.working,
    questions: notes.questions,
    cautions: ["cords", "fire"],
    estimate: null,
    diagnostics: notes.diagnostics,
  };
  if (plan === null) {
    return { figures: {}, cuts: [], materials: [], handbook: [], makingCounts: {}, ...shared, plan };
  }
  const widths = plan.strips.widths * plan.count;
  const areaMm2 = plan.size.width.mm.mul(plan.size.drop.mm).mul(plan.count);
  return {
    figures: figuresOf(plan),
    cuts: cutsOf(plan),
    materials: materialsOf(plan, context),
    handbook: [
      { cloth: plan.cloth.id, length: plan.handbook.total },
      ...plan.layers.map((layer) => ({
        cloth: layer.cloth.id,
        length: layer.height.times(layerStrips(layer, plan).widths * plan.count),
      })),
    ],
    makingCounts: {
      item: new Fraction(plan.count),
      width: new Fraction(widths),
      drop: new Fraction(widths),
      "square-metre": areaMm2.div(1_000_000),
      "square-foot": areaMm2.div(new Fraction("304.8").pow(2) as Fraction),
    },
    ...shared,
    plan,
  };
}

function planBlind(fields: BlindFields, context: ItemContext, notes: Notes): BlindPlan | null {
  const { units } = context;
  const p = (length: Length) => printLength(length, units);
  const count = fields.count ?? 1;
  const cloth = context.cloth(fields.cloth);
  const size = measureBlind(fields, context, notes);
  if (cloth !== null && cloth.usableWidth === null) {
    notes.diagnostics.push(
      diagnostic(context.place(["cloth"]), "cloth-without-width", `${cloth.name} has no width, so it cannot be said whether this blind needs a join.`, {
        actual: cloth.id,
        expected: "a usable width",
        hint: `Write width: in the card of ${cloth.id}, for example 54" or 137 cm.`,
      }),
    );
  }
  if (cloth?.usableWidth == null || size === null) return null;
  const usableWidth = cloth.usableWidth;
  const [sideTurn, top, bottom, join] = [context.length("side-turn"), context.length("top"), context.length("bottom"), context.length("join")];
  if (!usableWidth.isMoreThan(join.times(2))) {
    notes.diagnostics.push(
      diagnostic(context.place(["cloth"]), "cloth-narrower-than-joins", `${cloth.name} is ${p(usableWidth)} wide, which two join turnings of ${p(join)} use up.`, {
        actual: p(usableWidth),
        hint: "Look at the width on its card, or at the allowance join.",
      }),
    );
    return null;
  }
  const cutWidth = size.width.plus(sideTurn.times(2));
  const plainCut = size.drop.plus(top).plus(bottom);
  notes.working.push(
    { what: "Cut width", sum: `${p(size.width)} finished + 2 × ${p(sideTurn)} side turnings`, result: p(cutWidth), rounded: null },
    { what: "Cut, without repeat", sum: `${p(size.drop)} drop + ${p(top)} top + ${p(bottom)} bottom`, result: p(plainCut), rounded: null },
  );
  const strips = planStrips(cutWidth, usableWidth, join);
  if (strips.strip) {
    const inner = strips.wholes === 1 ? p(usableWidth) : `${strips.wholes} × ${p(usableWidth)}`;
    notes.working.push({
      what: "Side strips",
      sum: `(${p(cutWidth)} − ${inner} + ${strips.wholes * 2} × ${p(join)} seams) ÷ 2 + ${p(join)} seam`,
      result: `2 of ${p(strips.strip)}, beside ${strips.wholes === 1 ? "one whole width" : `${strips.wholes} whole widths`}`,
      rounded: null,
    });
    const shows = strips.strip.minus(join).minus(sideTurn);
    if (shows.isLessThan(join.times(2))) {
      notes.questions.push(
        `Of each side strip only ${p(Length.max(Length.zero, shows))} would be seen: is a narrower middle, or a narrower blind, better?`,
      );
    }
  }
  const repeatUp = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat.up : null;
  const match = selvedgeMatch(cloth);
  const shifts = match.shifts && strips.joins > 0;
  if (strips.joins > 0 && match.question) notes.questions.push(match.question);
  const cuts = strips.widths * count;
  const handbook = handbookCut(plainCut, cuts, repeatUp, shifts);
  if (repeatUp && handbook.repeats !== null) {
    notes.working.push({
      what: "Cut length, with its repeat",
      sum: `${p(plainCut)} ÷ ${p(repeatUp)} repeat = ${plainCut.over(repeatUp).valueOf().toFixed(2)}; ${handbook.repeats} × ${p(repeatUp)}`,
      result: p(handbook.cutLength),
      rounded: "up to whole repeats",
    });
  }
  const drops = shifts && repeatUp ? Math.floor(cuts / 2) : 0;
  notes.working.push({
    what: "By the handbook",
    sum: `${cuts} × ${p(handbook.cutLength)}${drops > 0 && repeatUp ? ` + ${drops} × ${p(repeatUp.dividedBy(2))} for the half-drop` : ""}`,
    result: p(handbook.total),
    rounded: null,
  });

  const headrail = context.length("headrail");
  if (!size.drop.isMoreThan(headrail)) {
    notes.diagnostics.push(
      diagnostic(context.place(["drop"]), "blind-shorter-than-headrail", `A drop of ${p(size.drop)} leaves nothing under the headrail's ${p(headrail)}.`, {
        actual: p(size.drop),
        hint: "Look at the drop, or at the allowance headrail.",
      }),
    );
    return null;
  }
  const least = context.length("flap-least");
  const most = context.length("flap-most");
  const sections = chooseSections(size.drop, headrail, least, most);
  notes.working.push(
    { what: "Sections", sum: `(${p(size.drop)} drop − ${p(headrail)} headrail) ÷ ${sections.sections}`, result: p(sections.section), rounded: "to an odd number of sections" },
    { what: "Rods", sum: `(${sections.sections} − 1) ÷ 2`, result: `${sections.rods}`, rounded: null },
  );
  if (!sections.wanted) {
    notes.questions.push(`Each section is ${p(sections.section)}, outside the ${p(least)} to ${p(most)} that is wanted: is that right for this window?`);
  }
  const short = context.length("rod-short");
  const rodLength = size.width.minus(short.times(2)).downTo(units === "inches" ? Length.inches("1/8") : Length.mm(1));
  notes.working.push({ what: "Rod", sum: `${p(size.width)} − 2 × ${p(short)}`, result: p(rodLength), rounded: units === "inches" ? "down to 1/8″" : "down to 1 mm" });

  const motifCentred = strips.joins === 0 && cloth.repeat?.across != null && centredPlace(cloth, cutWidth, plainCut).fits;
  if (strips.joins === 0 && cloth.repeat?.across != null && !motifCentred) {
    notes.questions.push(`No motif of ${cloth.name} can stand in the middle of a piece ${p(cutWidth)} wide: where across the blind is the motif wanted?`);
  }
  if (repeatUp) notes.questions.push("Where does the motif stand on the blind, counted from the top? Blinds of one drop are cut alike.");
  if (cloth.nap) notes.questions.push(`Does the pile of ${cloth.name} run up or down the blind?`);
  const operation = fields.operation ?? "cordless";
  if (!fields.operation) notes.working.push({ what: "Operation", sum: "nothing was said", result: "cordless", rounded: null });
  if (operation !== "cordless" && !fields.side) notes.questions.push(`At which side is the ${operation === "motor" ? "motor" : operation}: left or right?`);

  const layers: BlindLayer[] = [];
  for (const surface of ["interlining", "lining"] as const) {
    const id = fields[surface];
    const facts = id ? context.cloth(id) : null;
    if (!facts) continue;
    layers.push(layerOf(surface, facts, size, sections, top, context, notes));
  }
  return {
    size, cloth, usableWidth, sideTurn, top, bottom, join, headrail, cutWidth, plainCut, handbook, strips, sections,
    rodLength, layers, motifCentred, shifts, operation, count,
  };
}

function layerOf(
  surface: "lining" | "interlining",
  cloth: ClothFacts,
  size: BlindSize,
  sections: Sections,
  top: Length,
  context: ItemContext,
  notes: Notes,
): BlindLayer {
  const p = (length: Length) => printLength(length, context.units);
  if (surface === "interlining") {
    return { surface, cloth, width: size.width, height: size.drop, because: "finished size" };
  }
  const inside = context.length("lining-in");
  const turn = context.length("lining-turn");
  const pocket = context.length("rod-pocket");
  const width = size.width.minus(inside.times(2)).plus(turn.times(2));
  const pockets = pocket.times(sections.rods);
  const height = size.drop.plus(top).plus(pockets).plus(turn);
  const because = `${p(size.drop)} drop + ${p(top)} top + ${sections.rods} × ${p(pocket)} rod pockets + ${p(turn)} turn`;
  notes.working.push(
    { what: "Lining, cut width", sum: `${p(size.width)} − 2 × ${p(inside)} + 2 × ${p(turn)} turnings`, result: p(width), rounded: null },
    { what: "Lining, cut length", sum: because, result: p(height), rounded: null },
  );
  return { surface, cloth, width, height, because };
}

/** A lining is joined as the face is; on a card without a width it is taken to need no join. */
function layerStrips(layer: BlindLayer, plan: BlindPlan): Strips {
  return planStrips(layer.width, layer.cloth.usableWidth ?? layer.width, plan.join);
}

function cutsOf(plan: BlindPlan): ItemCut[] {
  const { cloth, cutWidth, plainCut, strips, top, bottom } = plan;
  const because = `drop, top and bottom turnings`;
  const repeat = cloth.repeat && cloth.repeat.match !== "free" ? cloth.repeat : null;
  // Blinds of one drop show the same part of the pattern at the same height.
  const series = `blinds ${plan.size.drop.mm.add(top.mm).add(bottom.mm).toFraction()}`;
  const along = (fromMiddle: number): AlongMatch =>
    repeat ? { how: "level", series, joined: plan.shifts ? Math.abs(fromMiddle) % 2 : 0 } : { how: "free" };
  const across: AcrossMatch = plan.motifCentred ? { how: "motif-at", fromLeft: cutWidth.dividedBy(2) } : { how: "free" };
  const base = { surface: "face", cloth: cloth.id, height: plainCut, count: plan.count, because };
  const plain = repeat === null && cloth.mayTurn;
  const face: ItemCut[] = [];
  if (strips.strip === null) {
    face.push({ ...base, piece: "blind", width: cutWidth, mayTurn: plain, across, along: along(0) });
  } else {
    const side = (strips.wholes - 1) / 2;
    face.push({ ...base, piece: "blind, left strip", width: strips.strip, mayTurn: false, across: { how: "selvedge", side: "right" }, along: along(side + 1) });
    for (let at = -side; at <= side; at += 1) {
      const name = strips.wholes === 1 ? "blind, middle width" : `blind, whole width ${at + side + 1} of ${strips.wholes}`;
      face.push({ ...base, piece: name, width: plan.usableWidth, mayTurn: false, across: { how: "whole-width" }, along: along(at) });
    }
    face.push({ ...base, piece: "blind, right strip", width: strips.strip, mayTurn: false, across: { how: "selvedge", side: "left" }, along: along(side + 1) });
  }
  const layers = plan.layers.flatMap((layer): ItemCut[] => {
    const joined = layerStrips(layer, plan);
    const shared = { surface: layer.surface, cloth: layer.cloth.id, height: layer.height, count: plan.count, mayTurn: false, along: { how: "free" } as const, because: layer.because };
    if (joined.strip === null) return [{ ...shared, piece: layer.surface, width: layer.width, across: { how: "free" }, mayTurn: layer.cloth.mayTurn }];
    return [
      { ...shared, piece: `${layer.surface}, left strip`, width: joined.strip, across: { how: "free" } },
      { ...shared, piece: `${layer.surface}, whole width`, width: layer.cloth.usableWidth as Length, count: plan.count * joined.wholes, across: { how: "whole-width" } },
      { ...shared, piece: `${layer.surface}, right strip`, width: joined.strip, across: { how: "free" } },
    ];
  });
  return [...face, ...layers];
}

function materialsOf(plan: BlindPlan, context: ItemContext): MaterialNeed[] {
  const p = (length: Length) => printLength(length, context.units);
  const { count, sections } = plan;
  return [
    boughtPieces(`blind rods of ${p(plan.rodLength)}`, sections.rods * count),
    boughtPieces(`bottom bars of ${p(plan.rodLength)}`, count),
    boughtPieces(`headrails of ${p(plan.size.width)}, ${plan.operation}`, count, "studio"),
  ];
}

function figuresOf(plan: BlindPlan): Record<string, number> {
  const { size, sections, strips, handbook } = plan;
  return {
    blinds: plan.count,
    widthMm: size.width.toMm(),
    dropMm: size.drop.toMm(),
    cutWidthMm: plan.cutWidth.toMm(),
    plainCutLengthMm: plan.plainCut.toMm(),
    cutLengthMm: handbook.cutLength.toMm(),
    widths: strips.widths,
    joins: strips.joins,
    ...(strips.strip ? { stripMm: strips.strip.toMm() } : {}),
    sections: sections.sections,
    sectionMm: sections.section.toMm(),
    rods: sections.rods,
    rodLengthMm: plan.rodLength.toMm(),
    topRodFromTopMm: sections.topRodFromTop.toMm(),
    stackDepthMm: sections.stackDepth.toMm(),
    ...(size.hemHeight ? { hemAboveFloorMm: size.hemHeight.toMm(), headAboveFloorMm: size.hemHeight.plus(size.drop).toMm() } : {}),
  };
}

/** The finished size as it stands on sheets. */
export function blindSizeText(plan: BlindPlan, context: Pick<ItemContext, "units">): string {
  return printSize([plan.size.width, plan.size.drop], context.units);
}
