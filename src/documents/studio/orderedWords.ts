import { type Receipt, returnedOf } from "../../quantities/arrival/returned.ts";
import { lengthOrRolls } from "../../quantities/text/rollsIn.ts";
import type { ProjectData } from "../projectData.ts";
import { backFor } from "../words/backFor.ts";
import { dateInWords } from "../words/dates.ts";
import { listed } from "../words/phrases.ts";

/** `Ordered: 6 m on 3 December 2026, number 0417`; empty where nothing of the card was ordered. */
export function ordersWords(data: ProjectData, card: string): string {
  const { units, language } = data.studio.fields;
  const orders = (data.project.fields.orders ?? []).filter((order) => order.cloth === card);
  const each = orders.map((order) => {
    const number = order.number ? `, number ${order.number}` : "";
    return `${lengthOrRolls(order.length, data.records.cloths.get(card), units, "down")} on ${dateInWords(order.on, language)}${number}`;
  });
  if (each.length === 0) return "";
  const back = returnedOf(card, data.project).map((receipt) => backWords(receipt, data));
  return [`Ordered: ${listed(each)}`, ...back].join(". ");
}

/** `6 m of lot 0123 went back on 12 January 2027, for a replacement` */
function backWords({ cloth, length, lot, returned }: Receipt, data: ProjectData): string {
  const { units, language } = data.studio.fields;
  const amount = lengthOrRolls(length, data.records.cloths.get(cloth), units, "down");
  const day = dateInWords(returned?.on ?? "", language);
  return `${amount} of lot ${lot} went back on ${day}, ${backFor(returned)}`;
}
