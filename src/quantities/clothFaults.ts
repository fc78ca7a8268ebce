import type { Grains } from "../cutplan/piece.ts";
import { type Diagnostic, diagnostic } from "../diagnostics/diagnostic.ts";
import type { ClothFacts } from "../items/itemKind.ts";
import { isClientsOwn } from "../records/clientsOwn.ts";
import type { ClothRecord, Records } from "../records/records.ts";
import type { Length } from "../units/length.ts";
import { printLength, type UnitSystem } from "../units/printLength.ts";
import type { ClothGroup } from "./clothGroups.ts";
import type { PlannedCloth } from "./cutPieces.ts";
import { lengthOfGrains } from "./grains.ts";
import type { GroupPlan } from "./planGroup.ts";
import { problemDiagnostic } from "./text/problemWords.ts";

/** No length holds one whole repeat: nothing that lies in register can be promised. */
export function repeatLongerThanBolt(
  card: ClothRecord | null,
  group: ClothGroup,
  cloth: PlannedCloth,
  bolt: Length | null,
  units: UnitSystem,
): Diagnostic[] {
  const repeat = cloth.pattern && cloth.pattern.vertical > 0 ? cloth.repeatUp : null;
  if (!card || !bolt || !repeat || repeat.isLessThan(bolt)) return [];
  if (group.cuts.every((each) => each.cut.along.how === "free")) return [];
  const p = (length: Length) => printLength(length, units);
  return [
    diagnostic(
      card.place(["price", "bolt", "length"]),
      "repeat-longer-than-bolt",
      `The repeat of ${card.fields.cloth} is ${p(repeat)}, and a bolt ${p(bolt)}: no bolt is sure to hold one whole repeat, so nothing can be cut from it in register.`,
      {
        actual: p(bolt),
        expected: `more than ${p(repeat)}`,
        hint: `Correct the bolt's length or repeat: up on this card. If both are right, ask the supplier for longer lengths, or let the pattern fall as it will on the items that use it.`,
      },
    ),
  ];
}

/** Sold in wholes of something that the card does not give: the usual step is taken, and it is said. */
export function soldByWhat(card: ClothRecord | null, repeats: boolean): Diagnostic[] {
  const price = card?.fields.price;
  const said = price?.["sold-by"];
  const lacks =
    said === "repeat" && !repeats ? "repeat" : said === "bolt" && !price?.bolt ? "bolt" : null;
  if (!card || !lacks) return [];
  return [
    diagnostic(
      card.place(["price", "sold-by"]),
      `sold-by-${lacks}-unknown`,
      `${card.fields.cloth} is sold by whole ${lacks}s, and its card gives no ${lacks}: the usual step was taken instead.`,
      {
        severity: "warning",
        actual: lacks,
        hint:
          lacks === "repeat"
            ? "Add the repeat, for example repeat: { up: 64 cm }, or write the step as a length."
            : "Add the bolt to price, for example bolt: { length: 30 yd, trade: 29.00 }, or write the step as a length.",
      },
    ),
  ];
}

/** Washed before it is cut, and nothing said of what it then loses: nothing more is bought, which may be too little. */
export function washedWithoutLoss(card: ClothRecord | null, { washing }: ClothFacts): Diagnostic[] {
  if (!card || !washing || card.fields.shrinkage) return [];
  return [
    diagnostic(
      card.place(["wash-first"]),
      "wash-first-without-shrinkage",
      `${card.fields.cloth} is washed before it is cut, and its card does not say how much it may shrink: no more is bought for it.`,
      {
        severity: "warning",
        hint: "Wash a marked square of the sample and measure it, or ask the supplier; then add shrinkage: 3 % and, across the width, shrinkage-across: 2 %, with your own figures.",
      },
    ),
  ];
}

/** Washed before it is cut, and said what it loses of its length alone: it is planned as wide as it comes, which may be too wide. */
export function washedWithoutLossAcross(
  card: ClothRecord | null,
  { washing, usableWidth }: ClothFacts,
  units: UnitSystem,
): Diagnostic[] {
  if (!card?.fields.shrinkage || !washing?.acrossUnsaid || !usableWidth) return [];
  return [
    diagnostic(
      card.place(["shrinkage"]),
      "wash-first-without-shrinkage-across",
      `${card.fields.cloth} is washed before it is cut, and its card says what it may lose of its length and nothing of its width: it is planned ${printLength(usableWidth, units)} wide, as it comes.`,
      {
        severity: "warning",
        hint: "Measure a washed square of the sample across too, or ask the supplier; then add shrinkage-across: 2 %, with your own figure, or shrinkage-across: 0 % where it loses nothing.",
      },
    ),
  ];
}

/** Pieces that no plan can place, each told at its item. */
export function problems(
  group: ClothGroup,
  plan: GroupPlan,
  facts: ClothFacts,
  units: UnitSystem,
  maxLength: Grains | null,
): Diagnostic[] {
  const bolt = maxLength === null ? null : lengthOfGrains(maxLength);
  const said = new Set<string>();
  return plan.problems.flatMap((problem) => {
    // One word for the pieces of an item that are alike in size and fault.
    const { room, item, cut } = problem.from;
    const key = [room, item, problem.reason, cut.width.mm.toFraction(), cut.height.mm.toFraction()];
    if (said.has(key.join())) return [];
    said.add(key.join());
    const user = group.users.find(
      (u) => u.room === problem.from.room && u.item.record.id === problem.from.item,
    );
    // The item's own arithmetic has said it better.
    if (!user || user.item.made.diagnostics.some((each) => each.severity === "error")) return [];
    return [problemDiagnostic(problem, user.item, facts.name, units, bolt)];
  });
}

/** A card without a width, told at the first item that has not said so itself. */
export function withoutWidth(
  group: ClothGroup,
  facts: ClothFacts,
  cards: Records["cloths"],
): Diagnostic[] {
  const user = group.users.find(
    ({ item }) => !item.made.diagnostics.some((each) => each.code === "cloth-without-width"),
  );
  const said = group.users.length > 0 && !user;
  if (!user || said) return [];
  const key = user.item.kind
    .cloths(user.item.record.fields as never)
    .find((each) => each.cloth === group.cloth)?.keyPath;
  const card = cards.get(group.cloth);
  return [
    diagnostic(
      user.item.record.place(key ?? ["cloth"]),
      "cloth-without-width",
      `${facts.name} has no width on its card, so nothing can be planned on it.`,
      {
        severity: "warning",
        actual: group.cloth,
        hint: `Add the usable width, between the selvedges, to ${card?.path ?? `cloths/${group.cloth}.md`}, for example width: 54" or 137 cm.`,
      },
    ),
  ];
}

/**
 * An error where one maker cuts a cloth partly from the client's own and partly from what is bought: these are two pieces of cloth, and
 * planned as one the pieces would lie across both and all of it be bought.
 */
export function ownedInPart({ cloth, users }: ClothGroup, name: string): Diagnostic[] {
  const own = users.find(({ item }) => isClientsOwn(item.record, cloth));
  const bought = users.find(({ item }) => !isClientsOwn(item.record, cloth));
  if (!own || !bought) return [];
  return [
    diagnostic(
      own.item.record.place(["owner"]),
      "owned-in-part",
      `${name} is the client's own for ${own.item.record.title} and bought for ${bought.item.record.title}, on one card.`,
      {
        expected: "a card for each",
        hint: `Write a second card for the client's own cloth, with its own width and repeat, and name that one here. If only the piece is the client's, take owner out: existing: yes says so.`,
      },
    ),
  ];
}
