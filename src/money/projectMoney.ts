import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { isOpen } from "../records/itemOptions.ts";
import type { ProjectRecord, StudioRecord } from "../records/records.ts";
import { type Money, subtractMoney, sumMoney } from "../units/money.ts";
import { boltsOf, type ClothBolt } from "./bolts.ts";
import { clothLines } from "./clothLines.ts";
import { discountLines } from "./discountLines.ts";
import { feeLines } from "./feeLines.ts";
import { withFreight } from "./freight.ts";
import { type Instalment, instalments } from "./instalments.ts";
import { instalmentsAsked } from "./instalmentsAsked.ts";
import { itemLines } from "./itemLines.ts";
import { clientSum, type TaxedLine } from "./lines.ts";
import type { MoneyInput } from "./moneyInput.ts";
import { payable } from "./payable.ts";
import { checkPhaseOrder } from "./phaseOrder.ts";
import { type Reserve, reserveOf } from "./reserve.ts";
import { NO_TAX, type TaxRates, taxOnLines } from "./tax.ts";
import { toMoney } from "./toMoney.ts";

export interface Totals {
  readonly trade: Money;
  /** Client prices; without the tax where tax comes on top. */
  readonly client: Money;
  readonly tax: Money;
  /** What the client pays: client prices and the tax that comes on top. */
  readonly total: Money;
  /** How much of the total is for items that the client has not chosen about yet. */
  readonly unchosen: Money;
  readonly budget: Money | null;
  readonly remaining: Money | null;
}

export interface PhaseMoney {
  /** Null: fees and what belongs to the whole project. */
  readonly phase: number | null;
  readonly total: Money;
  /** How hard its hardest item is to undo: 1 easily changed, 3 hard; null for what belongs to the whole project. */
  readonly commitment: 1 | 2 | 3 | null;
}

export interface ProjectMoney {
  readonly project: string;
  readonly currency: string;
  readonly taxIncluded: boolean;
  readonly lines: readonly TaxedLine[];
  readonly totals: Totals;
  /** Each room against its own budget, fees left out. */
  readonly rooms: readonly { readonly room: string; readonly totals: Totals }[];
  readonly phases: readonly PhaseMoney[];
  readonly instalments: readonly Instalment[];
  /** Cloths that have a bolt's price: cut against whole bolts. */
  readonly bolts: readonly ClothBolt[];
  /** What is kept for the unforeseen, and what of it was used. */
  readonly reserve: Reserve;
  readonly diagnostics: readonly Diagnostic[];
}

/** The items whose options are all open, as `room/item`. */
export function unchosenItems(project: ProjectRecord): ReadonlySet<string> {
  return new Set(
    project.rooms.flatMap((room) =>
      room.items.filter(isOpen).map((item) => `${room.id}/${item.id}`),
    ),
  );
}

/** The tax rates that the studio states; none where it states none. */
export function taxRates(studio: StudioRecord): TaxRates {
  const tax = studio.fields.tax;
  return tax
    ? {
        goods: tax.goods,
        services: tax.services,
        included: tax.included ?? false,
      }
    : NO_TAX;
}

/** Totals of some lines against a budget. */
export function totalsOf(
  lines: readonly TaxedLine[],
  included: boolean,
  budget: Money | null,
  currency: string,
): Totals {
  const client = clientSum(lines, currency);
  const tax = sumMoney(
    lines.map((l) => l.tax),
    currency,
  );
  const total = payable(lines, included, currency);
  const waiting = lines.filter((l) => l.unchosen);
  return {
    trade: sumMoney(
      lines.map((l) => l.trade),
      currency,
    ),
    client,
    tax,
    total,
    unchosen: payable(waiting, included, currency),
    budget,
    remaining: budget ? subtractMoney(budget, total) : null,
  };
}

/**
 * The price of a project, line by line: cloth by its share of what is bought, making, hardware, paint, objects, freight, fees, tax by
 * kind, reserve; totals against the budgets; phases; instalments. Exact; rounded to the minor unit where a price meets a quantity,
 * where tax is taken of a kind's sum, and where a share is taken.
 */
export function projectMoney(input: MoneyInput): ProjectMoney {
  const { studio, project } = input;
  const currency = studio.fields.currency;
  const found: Diagnostic[] = [];
  const rates = taxRates(studio);
  const { included } = rates;
  const taxed = taxedLines(input, rates, found);
  const kept = reserveOf(input, taxed, rates, found);
  const lines = [...taxed, ...kept.lines];
  const budgets = budgetsOf(project, currency, found);
  const totals = totalsOf(lines, included, budgets.project, currency);
  const asked = instalmentsAsked(project);
  const paid = instalments(asked, totals.total, studio.fields.language);
  found.push(...paid.diagnostics, ...checkPhaseOrder(project, input.items));
  return {
    project: project.id,
    currency,
    taxIncluded: included,
    lines,
    totals,
    rooms: project.rooms.map((room, at) => {
      const own = lines.filter((line) => line.room === room.id);
      return {
        room: room.id,
        totals: totalsOf(own, included, budgets.rooms[at] ?? null, currency),
      };
    }),
    phases: phasesOf(input, lines, included, currency),
    instalments: paid.value,
    bolts: boltsOf(input, currency, found),
    reserve: kept.reserve,
    diagnostics: found,
  };
}

/** Every line but the reserve, with its tax, and whether the client has still to choose it. */
function taxedLines(input: MoneyInput, rates: TaxRates, found: Diagnostic[]): TaxedLine[] {
  const { studio, project } = input;
  const currency = studio.fields.currency;
  const bought = withFreight(
    [...clothLines(input, currency, found), ...itemLines(input, currency, found)],
    studio,
    currency,
  );
  const priced = [
    ...bought,
    ...feeLines(project, studio, bought, currency, found),
    ...discountLines({ project, lines: bought, rates, currency, found }),
  ];
  const taxes = taxOnLines(priced, rates, currency);
  const waiting = unchosenItems(project);
  return priced.map((line, at) => ({
    ...line,
    tax: taxes[at] as Money,
    unchosen: waiting.has(`${line.room}/${line.item}`),
  }));
}

/** The budget of each room, and the project's: its own, else the sum of its rooms' where every one has one. */
function budgetsOf(
  project: ProjectRecord,
  currency: string,
  found: Diagnostic[],
): { readonly rooms: readonly (Money | null)[]; readonly project: Money | null } {
  const read = (record: Pick<ProjectRecord, "place">, amount: typeof project.fields.budget) =>
    amount ? toMoney(amount, currency, record.place(["budget"]), found) : null;
  const rooms = project.rooms.map((room) => read(room, room.fields.budget));
  const own = read(project, project.fields.budget);
  const known = rooms.filter((b): b is Money => b !== null);
  const all = known.length > 0 && known.length === rooms.length;
  return { rooms, project: own ?? (all ? sumMoney(known, currency) : null) };
}

/** What each phase comes to, in their order, fees last. */
function phasesOf(
  input: MoneyInput,
  lines: readonly TaxedLine[],
  included: boolean,
  currency: string,
): PhaseMoney[] {
  const phases = [...new Set(lines.map((l) => l.phase))].sort((a, b) => (a ?? 99) - (b ?? 99));
  return phases.map((phase) => {
    const own = lines.filter((line) => line.phase === phase);
    const { total } = totalsOf(own, included, null, currency);
    return { phase, total, commitment: phase === null ? null : commitmentOf(input, phase) };
  });
}

/** How hard the hardest item of a phase is to undo. */
function commitmentOf({ items }: MoneyInput, phase: number): 1 | 2 | 3 {
  const own = items.filter((item) => item.usualPhase === phase);
  return Math.max(1, ...own.map((item) => item.commitment)) as 1 | 2 | 3;
}
