import type { WorkingLine } from "../../items/itemKind.ts";
import { capital } from "../../units/capital.ts";
import type { Length } from "../../units/length.ts";
import type { UnitSystem } from "../../units/printLength.ts";
import { printCloth, printLength } from "../../units/printLength.ts";
import type {
  ClothQuantity,
  ItemQuantity,
  ProjectQuantities,
  TrimBuy,
  UsedDefault,
} from "../quantityTypes.ts";
import { sharedBuyOf } from "../together/sharedBuyOf.ts";
import { isTrim } from "../trimBuys.ts";
import { clothWaitsFor, isUnchosen } from "../unchosen.ts";
import { beginWords } from "./beginWords.ts";
import { clothText } from "./clothText.ts";
import { type Called, itemsCalled } from "./itemsCalled.ts";
import { itemWorking } from "./itemWorking.ts";
import { lotOfLength, lotWords } from "./lotWords.ts";
import { allowanceOrigins, originWords, WRITTEN } from "./origins.ts";
import { savingWords } from "./savingWords.ts";
import { togetherWords } from "./togetherWords.ts";

/** The quantities as text: what to buy, then each cloth and each item with a working that can be followed with a pencil. */
export function quantitiesText(
  quantities: ProjectQuantities,
  units: UnitSystem,
  language: "en-US" | "en-GB",
): string {
  const { cloths, materials, trims, items } = quantities;
  const called = itemsCalled(quantities, language);
  const title =
    quantities.room === null ? quantities.project : `${quantities.project}/${quantities.room}`;
  const filtered =
    quantities.room === null
      ? []
      : ["Cloth is planned and bought for the whole project; the pieces listed are this room's."];
  const waits = (items: readonly string[]): string =>
    items.length > 0 ? `; NOT TO BE ORDERED until the client has chosen: ${items.join("; ")}` : "";
  const waitsFor = (cloth: string): string =>
    waits(clothWaitsFor(quantities, cloth).map((u) => called(u.room, u.item)));
  const bought = [
    ...cloths.flatMap((each) => {
      const shared = sharedBuyOf(quantities, each);
      if (!shared)
        return [
          `  ${each.buy.text}  ${each.facts.name}${forMaker(each.maker)}${each.clientsOwn ? " (the client's own: not to be ordered)" : ""}${waitsFor(each.cloth)}`,
        ];
      // One order for all its makers: it stands where the first of them has it.
      return cloths.find((other) => sharedBuyOf(quantities, other) === shared) === each
        ? [
            `  ${shared.buy.text}  ${shared.name}, one order for all makers: ${togetherWords(shared, (maker) => maker)}${waitsFor(each.cloth)}`,
          ]
        : [];
    }),
    ...trims.map(
      (each) =>
        `  ${each.buy.text}  ${each.name} (${usesWords(each.uses, units, called)})${waitsFor(each.cloth)}`,
    ),
    ...materials
      .filter((each) => !isTrim(each))
      .map(
        (each) =>
          `  ${each.text}${each.cloth && !each.text.includes(each.what) ? `  ${each.what}` : ""} (${called(each.room, each.item)})${isUnchosen(quantities, each.room, each.item) ? "; NOT TO BE ORDERED until the client has chosen" : ""}`,
      ),
  ];
  const saving = savingWords(cloths, units);
  return [
    title,
    ...filtered,
    "",
    "TO BUY",
    ...(bought.length > 0 ? bought : ["  Nothing yet."]),
    ...(saving === null ? [] : [saving]),
    ...(trims.length > 0 ? ["", ...working(trims.map((each) => each.working))] : []),
    ...cloths.flatMap((each) => ["", ...clothLines(each, quantities, units, called)]),
    "",
    WRITTEN,
    ...items.flatMap((each) => {
      const lines = itemLines(each, called);
      // What stays as it is has nothing to be worked out.
      return lines.length > 1 ? ["", ...lines] : [];
    }),
  ].join("\n");
}

/** `Bay, curtains 2 1/4 yd; Snug, pelmet 3 yd`. */
function usesWords(uses: TrimBuy["uses"], units: UnitSystem, called: Called): string {
  return uses
    .map(({ room, item, length }) => `${called(room, item)} ${printCloth(length, units)}`)
    .join("; ");
}

function forMaker(maker: string | null): string {
  return maker === null ? "" : `, for ${maker}`;
}

function clothLines(
  each: ClothQuantity,
  quantities: ProjectQuantities,
  units: UnitSystem,
  called: Called,
): string[] {
  const { plan } = each;
  const p = (mm: ClothQuantity["usableWidth"]) => printLength(mm, units);
  const which = each.lots.length > 1 ? "lots" : "lot";
  const lot = each.lot === null ? "lot not known until it arrives" : `${which} ${each.lot}`;
  const divided = dividedWords(each, quantities);
  const lines = [
    `CLOTH ${each.facts.name}${forMaker(each.maker)}, ${lot}`,
    ...divided,
    ...working(each.working),
    ...each.origins.map((origin) => `  ${originWords(origin)}`),
  ];
  if (plan.pieces.length > 0) lines.push(...planLines(each, units, called));
  if (each.handbookWords) lines.push(`  ${each.handbookWords}`);
  for (const estimate of each.estimates)
    lines.push(`  ESTIMATE ${called(estimate.room, estimate.item)}: ${estimate.text}`);
  lines.push(...defaults(each.defaultsUsed.filter((used) => used.room === null)));
  if (plan.pieces.length > 0) {
    const { released, number } = plan;
    lines.push(
      released
        ? `  CUTTING PLAN ${number}: released to cut by ${released.by}, ${released.on}`
        : `  CUTTING PLAN ${number}: NOT FOR CUTTING`,
    );
    if (plan.forCutting && !released)
      lines.push(
        `    All is checked. To release it, add to ${each.receipts > 1 ? `one of its ${each.receipts} receipts` : "its receipt"} in project.md: released: { by: your name, on: the day, plan: ${number} }`,
      );
    lines.push(...plan.notForCutting.map((why) => `    ${why}`));
    const many = plan.lengths.length > 1;
    for (const piece of plan.pieces) {
      const lot = lotOfLength(each, piece.length);
      const on = many ? `length ${piece.length + 1}${lot === null ? "" : ` of lot ${lot}`}, ` : "";
      const turned = piece.turned ? ", turned" : "";
      lines.push(
        `    ${on}${p(piece.x)} from the left selvedge, ${p(piece.y)} up: ${p(piece.width)} × ${p(piece.height)}${turned}  ${called(piece.room, piece.item)}: ${piece.piece}`,
      );
    }
  }
  return lines;
}

/** Which room comes from which lot, where there are several. */
function dividedWords(each: ClothQuantity, { rooms, items }: ProjectQuantities): string[] {
  const words = lotWords(
    each.lots,
    (id) => rooms.find((room) => room.plan.room.id === id)?.plan.room.fields.room ?? id,
    (room, item) => items.find((own) => own.room === room && own.item === item)?.title ?? item,
  );
  return words === "" ? [] : [`  No one lot holds everything. ${capital(words)}.`];
}

/** What is proved of the plan, what was chosen for it, and where it begins in the pattern. */
function planLines({ plan }: ClothQuantity, units: UnitSystem, called: Called): string[] {
  const p = (length: Length) => printLength(length, units);
  const lines: string[] = [];
  if (plan.lowerBound.equals(plan.length)) {
    lines.push("  No plan with the pieces so placed can need less: this is proved.");
  } else {
    lines.push(
      `  No plan with the pieces so placed can need less than ${clothText(plan.lowerBound, units, "down")}.`,
    );
  }
  const saves = plan.saved ? `; it saves ${clothText(plan.saved, units, "down")}` : "";
  if (plan.chose.includes("pattern-point")) {
    lines.push(
      `  The pattern's point on pieces that need only be level was chosen for the shortest plan${saves}.`,
    );
  }
  if (plan.chose.includes("welt-shape")) {
    lines.push(`  The shape of the cloth for welt was chosen for the shortest plan${saves}.`);
  }
  const levels = plan.levels.map((level) => {
    const who = level.items.map((item) => called(level.room, item)).join("; ");
    return level.motifAboveFoot === null
      ? `  ${who}: the pieces are level with each other; any point of the pattern serves as well.`
      : `  ${who}: a motif's middle stands ${p(level.motifAboveFoot)} above the cut foot of what need only be level.`;
  });
  // Two series of an item that stand alike are said once.
  lines.push(...new Set(levels));
  lines.push(...beginWords(plan, units).map((words) => `  ${words}`));
  return lines;
}

function itemLines(each: ItemQuantity, called: Called): string[] {
  const { made } = each;
  return [
    `ITEM ${called(each.room, each.item)} (${each.room}/${each.item})${made.estimate ? "  ESTIMATE" : ""}`,
    ...working(itemWorking(made)),
    ...allowanceOrigins(each.allowances).map((origin) => `  ${originWords(origin)}`),
    ...made.questions.map((question) => `  To ask: ${question}`),
  ];
}

function working(lines: readonly WorkingLine[]): string[] {
  return lines.map(
    (line) =>
      `  ${line.what}: ${line.sum} → ${line.result}${line.rounded ? ` (${line.rounded})` : ""}`,
  );
}

function defaults(used: readonly UsedDefault[]): string[] {
  return used.map((each) => `  Usual value taken: ${each.what}: ${each.value} (${each.source})`);
}
