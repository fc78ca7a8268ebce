import type { WorkingLine } from "../items/itemKind.ts";
import type { UnitSystem } from "../units/printLength.ts";
import { printLength } from "../units/printLength.ts";
import { clothText } from "./clothText.ts";
import type {
  ClothQuantity,
  ItemQuantity,
  ProjectQuantities,
  UsedDefault,
} from "./quantityTypes.ts";

/** The quantities as text: what to buy, then each cloth and each item with a working that can be followed with a pencil. */
export function quantitiesText(quantities: ProjectQuantities, units: UnitSystem): string {
  const { cloths, materials, items } = quantities;
  const title =
    quantities.room === null ? quantities.project : `${quantities.project}/${quantities.room}`;
  const filtered =
    quantities.room === null
      ? []
      : ["Cloth is planned and bought for the whole project; the pieces listed are this room's."];
  const bought = [
    ...cloths.map((each) => `  ${each.buy.text}  ${each.facts.name}${forMaker(each.maker)}`),
    ...materials.map(
      (each) => `  ${each.text}${each.cloth ? `  ${each.what}` : ""} (${each.item})`,
    ),
  ];
  return [
    title,
    ...filtered,
    "",
    "TO BUY",
    ...(bought.length > 0 ? bought : ["  Nothing yet."]),
    ...cloths.flatMap((each) => ["", ...clothLines(each, units)]),
    ...items.flatMap((each) => ["", ...itemLines(each)]),
  ].join("\n");
}

function forMaker(maker: string | null): string {
  return maker === null ? "" : `, for ${maker}`;
}

function clothLines(each: ClothQuantity, units: UnitSystem): string[] {
  const { plan } = each;
  const p = (mm: ClothQuantity["usableWidth"]) => printLength(mm, units);
  const lot = each.lot === null ? "lot not known until it arrives" : `lot ${each.lot}`;
  const lines = [
    `CLOTH ${each.facts.name}${forMaker(each.maker)}, ${lot}`,
    ...working(each.working),
  ];
  if (plan.pieces.length > 0) {
    lines.push(
      `  No plan with the pieces so placed can need less than ${clothText(plan.lowerBound, units, "down")}.`,
    );
  }
  if (plan.saved) {
    lines.push(
      `  Where the pattern begins on pieces that need only be level, or how the welt's cloth is cut, was chosen: it saves ${clothText(plan.saved, units, "down")}.`,
    );
  }
  for (const level of plan.levels) {
    lines.push(
      `  Level pieces (${level.series}): a motif's middle stands ${p(level.motifAboveFoot)} above the cut edge.`,
    );
  }
  if (each.handbookWords) lines.push(`  ${each.handbookWords}`);
  for (const estimate of each.estimates)
    lines.push(`  ESTIMATE ${estimate.item}: ${estimate.text}`);
  lines.push(...defaults(each.defaultsUsed.filter((used) => used.room === null)));
  if (plan.pieces.length > 0) {
    lines.push(plan.forCutting ? "  CUTTING PLAN" : "  CUTTING PLAN: NOT FOR CUTTING");
    lines.push(...plan.notForCutting.map((why) => `    ${why}`));
    const many = plan.lengths.length > 1;
    for (const piece of plan.pieces) {
      const on = many ? `length ${piece.length + 1}, ` : "";
      const turned = piece.turned ? ", turned" : "";
      lines.push(
        `    ${on}${p(piece.x)} from the left selvedge, ${p(piece.y)} up: ${p(piece.width)} × ${p(piece.height)}${turned}  ${piece.item}, ${piece.piece}`,
      );
    }
  }
  return lines;
}

function itemLines(each: ItemQuantity): string[] {
  const { made } = each;
  return [
    `ITEM ${each.title} (${each.room}/${each.item})${made.estimate ? "  ESTIMATE" : ""}`,
    ...working(made.working),
    ...defaults(each.defaultsUsed),
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
