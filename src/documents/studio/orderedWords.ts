import { lengthOrRolls } from "../../quantities/text/rollsIn.ts";
import type { ProjectData } from "../projectData.ts";
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
  return each.length === 0 ? "" : `Ordered: ${listed(each)}`;
}
