import type { Diagnostic } from "../diagnostics/diagnostic.ts";
import { isOpen } from "../records/itemOptions.ts";
import type { ProjectRecord, StudioRecord } from "../records/records.ts";
import {
  addMoney,
  type Money,
  money,
  subtractMoney,
  sumMoney,
  timesMoney,
} from "../units/money.ts";
import { boltsOf, type ClothBolt } from "./bolts.ts";
import { clothLines } from "./clothLines.ts";
import { feeLines } from "./feeLines.ts";
import { type Instalment, type InstalmentAsked, instalments } from "./instalments.ts";
import { itemLines } from "./itemLines.ts";
import type { PriceLine, TaxedLine } from "./lines.ts";
import type { MoneyInput } from "./moneyInput.ts";
import { checkPhaseOrder } from "./phaseOrder.ts";
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
  const client = sumMoney(
    lines.map((l) => l.client),
    currency,
  );
  const tax = sumMoney(
    lines.map((l) => l.tax),
    currency,
  );
  const total = included ? client : addMoney(client, tax);
  const waiting = lines.filter((l) => l.unchosen);
  return {
    trade: sumMoney(
      lines.map((l) => l.trade),
      currency,
    ),
    client,
    tax,
    total,
    unchosen: sumMoney(
      waiting.map((l) => (included ? l.client : addMoney(l.client, l.tax))),
      currency,
    ),
    budget,
    remaining: budget ? subtractMoney(budget, total) : null,
  };
}

/** The reserve for the unforeseen: a share of all client prices, untaxed, on one line. */
function reserveLine(
  studio: StudioRecord,
  lines: readonly TaxedLine[],
  included: boolean,
  currency: string,
): TaxedLine[] {
  const share = studio.fields.contingency;
  if (!share || share.compare(0) === 0) return [];
  const { total } = totalsOf(lines, included, null, currency);
  const client = timesMoney(total, share);
  const zero = money(0, currency);
  return [
    {
      room: null,
      item: null,
      what: "reserve",
      label: "Kept in reserve",
      cloth: null,
      maker: null,
      phase: null,
      trade: zero,
      client,
      taxKind: "none",
      open: false,
      tax: zero,
      unchosen: false,
    },
  ];
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
  const bought: PriceLine[] = [
    ...clothLines(input, currency, found),
    ...itemLines(input, currency, found),
  ];
  const priced = [...bought, ...feeLines(project, studio, bought, currency, found)];
  const rates = taxRates(studio);
  const taxes = taxOnLines(priced, rates, currency);
  const waiting = unchosenItems(project);
  const taxed = priced.map(
    (line, at): TaxedLine => ({
      ...line,
      tax: taxes[at] as Money,
      unchosen: waiting.has(`${line.room}/${line.item}`),
    }),
  );
  const lines = [...taxed, ...reserveLine(studio, taxed, rates.included, currency)];
  const roomBudgets = project.rooms.map((room) =>
    room.fields.budget
      ? toMoney(room.fields.budget, currency, room.place(["budget"]), found)
      : null,
  );
  const ownBudget = project.fields.budget
    ? toMoney(project.fields.budget, currency, project.place(["budget"]), found)
    : null;
  const known = roomBudgets.filter((b): b is Money => b !== null);
  const budget =
    ownBudget ??
    (known.length > 0 && known.length === roomBudgets.length ? sumMoney(known, currency) : null);
  const totals = totalsOf(lines, rates.included, budget, currency);
  const asked = (project.fields.instalments ?? []).flatMap((one, at): InstalmentAsked[] => {
    const name = (["deposit", "interim", "balance"] as const).find((n) => one[n] !== undefined);
    const part = name ? one[name] : undefined;
    return name && part !== undefined
      ? [
          {
            name,
            part,
            due: one.due,
            place: project.place(["instalments", at, name]),
          },
        ]
      : [];
  });
  const paid = instalments(asked, totals.total, studio.fields.language);
  found.push(...paid.diagnostics);
  found.push(...checkPhaseOrder(project, input.items));
  const phases = [...new Set(lines.map((l) => l.phase))].sort((a, b) => (a ?? 99) - (b ?? 99));
  return {
    project: project.id,
    currency,
    taxIncluded: rates.included,
    lines,
    totals,
    rooms: project.rooms.map((room, at) => ({
      room: room.id,
      totals: totalsOf(
        lines.filter((l) => l.room === room.id),
        rates.included,
        roomBudgets[at] ?? null,
        currency,
      ),
    })),
    phases: phases.map((phase) => ({
      phase,
      total: totalsOf(
        lines.filter((l) => l.phase === phase),
        rates.included,
        null,
        currency,
      ).total,
      commitment:
        phase === null
          ? null
          : (Math.max(
              1,
              ...input.items.filter((i) => i.usualPhase === phase).map((i) => i.commitment),
            ) as 1 | 2 | 3),
    })),
    instalments: paid.value,
    bolts: boltsOf(input, currency, found),
    diagnostics: found,
  };
}
