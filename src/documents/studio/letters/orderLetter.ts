import { scheduleOf } from "../../../sourcing/schedule.ts";
import { approvalOf } from "../../../sourcing/whatIsDone.ts";
import { type Money, printMoney, sumMoney } from "../../../units/money.ts";
import type { Page } from "../../page.ts";
import { orderLetterPath } from "../../paths.ts";
import type { ProjectData } from "../../projectData.ts";
import { longDay } from "../../words/dates.ts";
import type { Asked } from "./bySupplier.ts";
import { type OrderLine, ordersBySupplier } from "./orderLines.ts";
import { supplierLetter } from "./supplierLetter.ts";

/** A letter for each supplier of whom something can be ordered now: what, how much, at which price, by when and where to. */
export function orderLetters(data: ProjectData): Page[] {
  return ordersBySupplier(data).map((order) => orderLetter(data, order));
}

function orderLetter(data: ProjectData, order: Asked<OrderLine>): Page {
  const { project, studio } = data;
  const { language, currency, address } = studio.fields;
  const sums = order.lines.map((line) => line.sum);
  const known = sums.filter((sum): sum is Money => sum !== null);
  return supplierLetter(data, {
    path: orderLetterPath(project.id, order.key),
    title: "Order",
    supplier: order.supplier,
    early:
      approvalOf(project) === null
        ? "The client has not approved this yet: do not send it before that is written in project.md."
        : "",
    rows: order.lines.map(({ cloth, sum, ...line }) => ({
      ...line,
      isCloth: cloth !== null,
      sum: sum ? printMoney(sum, language) : "please quote",
    })),
    heads: ["Price", "Sum"],
    goods: known.length === sums.length ? printMoney(sumMoney(known, currency), language) : "",
    wishes: wishesOf(data, order),
    deliver: project.fields.delivery ?? address ?? "",
    isSigned: true,
  });
}

/** What a supplier is asked beside the goods: one lot, a cutting, an answer, and the day. */
function wishesOf(data: ProjectData, { key, lines }: Asked<OrderLine>): string[] {
  const cloths = lines.filter((line) => line.cloth !== null);
  const day = neededOn(data, key, new Set(cloths.map((line) => line.cloth)));
  return [
    ...(cloths.some((line) => !line.isByRoll)
      ? [
          "Each cloth from one dye lot, and in one length where that can be. Please send us a cutting of that lot, and cut the cloth only when we have said yes to it.",
        ]
      : []),
    ...(cloths.some((line) => line.isByRoll) ? ["All rolls of a paper of one batch."] : []),
    ...(day === null ? [] : [`It must be there by ${longDay(day, data.studio.fields.language)}.`]),
    "Please confirm what you send, its price and the day, and put our reference on every parcel.",
  ];
}

/** The first day on which one of these cloths must be with its maker, or a piece of this supplier must be there; null where none is reckoned. */
function neededOn(
  data: ProjectData,
  supplier: string,
  cloths: ReadonlySet<string | null>,
): string | null {
  const days = scheduleOf(data).steps.flatMap(({ kind, cloth, bought, done, on }) => {
    if (done) return [];
    if (kind === "bought" && bought?.supplier === supplier) return [bought.neededOn];
    return kind === "cloth" && cloths.has(cloth) ? [on] : [];
  });
  return days.sort()[0] ?? null;
}
