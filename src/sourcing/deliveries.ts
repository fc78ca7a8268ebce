import type { ClothRecord, ProjectRecord } from "../records/records.ts";
import { type Arrived, arrivedOf, type Need, needsOf } from "./needs.ts";
import type { ScheduleInput } from "./scheduleTypes.ts";

/** What one maker gets of one card: what was ordered of the card, and what of it has come. */
export interface Delivery {
  readonly need: Need;
  readonly card: ClothRecord;
  readonly orders: NonNullable<ProjectRecord["fields"]["orders"]>;
  /** The supplier's key: the last order's own, else the card's; null where neither names one. */
  readonly supplier: string | null;
  readonly arrived: Arrived | null;
}

/** Every delivery of a project, those of one supplier together, in the order of its rooms; the client's own cloth comes too. */
export function deliveriesOf({
  project,
  records,
  quantities,
}: Pick<ScheduleInput, "project" | "records" | "quantities">): Delivery[] {
  const needs = needsOf(quantities, records);
  const all = needs.flatMap((need): Delivery[] => {
    const card = records.cloths.get(need.cloth);
    if (!card) return [];
    const orders = (project.fields.orders ?? []).filter((o) => o.cloth === need.cloth);
    const other = orders.findLast((o) => o.supplier !== undefined)?.supplier;
    const supplier = need.clientsOwn ? null : (other ?? card.fields.supplier ?? null);
    return [{ need, card, orders, supplier, arrived: arrivedOf(need, needs, project) }];
  });
  const suppliers = [...new Set(all.map((d) => d.supplier))];
  return suppliers.flatMap((supplier) => all.filter((d) => d.supplier === supplier));
}

/** What is measured when a delivery comes: of what is bought by the roll, of a cloth with a pattern, of a plain one, of a trim. */
export type MeasuredAs = "rolls" | "patterned" | "plain" | "trim";

export function measuredAs({ need }: Delivery): MeasuredAs {
  if (need.rolls) return "rolls";
  if (!need.planned) return "trim";
  const { plan, facts } = need.planned;
  // A stripe along the cloth, and what is free of match, comes again in no height that could be measured.
  const isMatched = plan.pattern !== null && plan.pattern.match !== "free";
  return isMatched || facts.repeatUnknown ? "patterned" : "plain";
}

const KEYS: Readonly<Record<MeasuredAs, readonly string[]>> = {
  rolls: ["lot", "length", "on"],
  patterned: ["lot", "length", "width", "repeat", "first-motif", "on"],
  plain: ["lot", "length", "width", "on"],
  trim: ["lot", "length", "on"],
};

/**
 * The line for `receipts` of the project's file, with dots for what is to be filled in. A dot that is left is an error at its line: nothing
 * is taken as measured that was not.
 */
export function receiptLine(delivery: Delivery): string {
  const { cloth, maker } = delivery.need;
  const known = [`cloth: ${scalar(cloth)}`, ...(maker === null ? [] : [`maker: ${scalar(maker)}`])];
  const open = KEYS[measuredAs(delivery)].map((key) => `${key}: …`);
  return `- { ${[...known, ...open].join(", ")} }`;
}

/** A name as YAML reads it between braces: a comma or a bracket in it would end it. */
function scalar(name: string): string {
  return /^[\p{L}\p{N}][\p{L}\p{N} _.'’-]*$/u.test(name) ? name : `'${name.replace(/'/g, "''")}'`;
}
