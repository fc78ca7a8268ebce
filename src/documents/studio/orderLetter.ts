import { scheduleOf } from "../../sourcing/schedule.ts";
import { approvalOf } from "../../sourcing/whatIsDone.ts";
import { type Money, printMoney, sumMoney } from "../../units/money.ts";
import type { Page } from "../page.ts";
import { orderLetterPath, ordersPath } from "../paths.ts";
import type { ProjectData } from "../projectData.ts";
import { wayTo } from "../ways.ts";
import { dateInWords, longDay } from "../words/dates.ts";
import { runningWords } from "../words/pageStyle.ts";
import { lettersOf, type SupplierLetter } from "./lettersOf.ts";

/**
 * A letter for each supplier of whom something can be ordered now, to be sent as it is: what, how much, at which price, by when and where to.
 * It names the project as its reference, and neither the client nor any other supplier.
 */
export function orderLetters(data: ProjectData): Page[] {
  return lettersOf(data).map((letter) => orderLetter(data, letter));
}

function orderLetter(data: ProjectData, letter: SupplierLetter): Page {
  const { project, studio } = data;
  const { language, paper } = studio.fields;
  const { key, supplier, lines } = letter;
  const path = orderLetterPath(project.id, key);
  const isA4 = paper === "a3";
  const sums = lines.map((line) => line.sum);
  const known = sums.filter((sum): sum is Money => sum !== null);
  const isApproved = approvalOf(project) !== null;
  return {
    reader: "studio",
    project: project.id,
    room: null,
    path,
    title: `${project.fields.project}: order from ${supplier.name}`,
    language,
    paper: isA4 ? "a4" : "letter",
    pdf: true,
    model: {
      kind: "order-letter",
      style: runningWords(
        studio.fields.studio,
        `Order, ${dateInWords(data.dated, language)}`,
        `Our reference: ${project.fields.project}`,
      ),
      letter: isA4 ? "a4-page" : "letter-page",
      early: isApproved
        ? ""
        : "The client has not approved this yet: do not send it before that is written in project.md.",
      studio: {
        name: studio.fields.studio,
        lines: [
          studio.fields.address,
          studio.fields.phone,
          studio.fields.email,
          studio.fields.web,
        ].filter((line) => line !== undefined),
      },
      supplier: {
        name: supplier.name,
        reach: [supplier.email, supplier.phone].filter((line) => line !== undefined),
        account: supplier.account ?? "",
      },
      reference: project.fields.project,
      date: longDay(data.dated, language),
      lines: lines.map((line) => ({
        ...line,
        sum: line.sum ? printMoney(line.sum, language) : "please quote",
      })),
      hasReferences: lines.some((line) => line.reference !== ""),
      goods:
        known.length === sums.length
          ? printMoney(sumMoney(known, studio.fields.currency), language)
          : "",
      wishes: wishesOf(data, letter),
      deliver: project.fields.delivery ?? studio.fields.address ?? "",
      ways: [{ href: wayTo(path, ordersPath(project.id)), text: "Order list" }],
    },
    pictures: [],
  };
}

/** What a supplier is asked beside the goods: one lot, a cutting, an answer, and the day. */
function wishesOf(data: ProjectData, { key, lines }: SupplierLetter): string[] {
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
