import { itemName } from "../items/itemName.ts";
import type { TaxedLine } from "../money/lines.ts";
import { clothNames, payable } from "../money/payable.ts";
import type { ProjectMoney } from "../money/projectMoney.ts";
import type { ProjectQuantities } from "../quantities/quantityTypes.ts";
import type { ProjectRecord, Records, StudioRecord } from "../records/records.ts";
import { capital } from "../units/capital.ts";
import { madeAs } from "./madeAs.ts";
import { partNames } from "./partNames.ts";
import { partsAs } from "./partsAs.ts";
import type { SentItem, SentOther, SentRevision } from "./sentRevision.ts";

/** A project worked out, and the day on which its proposal is recorded. */
export interface SendInput {
  readonly project: ProjectRecord;
  readonly studio: StudioRecord;
  readonly records: Records;
  readonly quantities: ProjectQuantities;
  readonly money: ProjectMoney;
  readonly dated: string;
  readonly today: string;
}

/**
 * The record of a project's proposal as it is now: each item with its cloths and what the client pays for it, what belongs to the whole,
 * and the total. Sums are whole minor units and add up to the total. A project without a `revision` is recorded under none.
 */
export function sentOf(input: SendInput): SentRevision {
  const { project, money, dated, today } = input;
  const items = itemsOf(input);
  const others = othersOf(money);
  const sum = (all: readonly { readonly sumMinor: number }[]) =>
    all.reduce((total, each) => total + each.sumMinor, 0);
  return {
    form: 1,
    project: project.id,
    revision: project.fields.revision ?? "",
    sent: today,
    dated,
    currency: money.currency,
    items,
    others,
    totalMinor: sum(items) + sum(others),
  };
}

function itemsOf({ quantities, studio, records, money }: SendInput): SentItem[] {
  const { language } = studio.fields;
  return quantities.rooms.flatMap(({ plan, items }) =>
    items.flatMap(({ record, kind }): SentItem[] => {
      const lines = money.lines.filter((l) => l.room === plan.room.id && l.item === record.id);
      if (lines.length === 0) return [];
      const { title } = record;
      const object = kind.kind === "object" ? records.objects.get(title)?.fields.object : undefined;
      return [
        {
          room: plan.room.id,
          roomName: plan.room.fields.room,
          item: record.id,
          what: object ? capital(object) : itemName(kind, title, language),
          cloths: clothNames(lines),
          way: record.options?.[record.stands ?? 0]?.title ?? null,
          made: madeAs(record, studio.fields.units, (id) => records.cloths.has(id)),
          parts: partsAs(record, studio.fields.units, partNames(items, records, language)),
          ...paidFor(lines, money),
        },
      ];
    }),
  );
}

function othersOf(money: ProjectMoney): SentOther[] {
  // A sample that the client is not charged for is no part of what she read.
  const lines = money.lines.filter((l) => l.item === null && (l.open || l.client.minor !== 0n));
  const labels = [...new Set(lines.map((l) => l.label))];
  return labels.map((what) => ({
    what,
    ...paidFor(
      lines.filter((l) => l.label === what),
      money,
    ),
  }));
}

/** What the client pays for some lines, and whether a price of them is still to come. */
function paidFor(lines: readonly TaxedLine[], { taxIncluded, currency }: ProjectMoney) {
  const { minor } = payable(lines, taxIncluded, currency);
  return { sumMinor: Number(minor), open: lines.some((l) => l.open) };
}
