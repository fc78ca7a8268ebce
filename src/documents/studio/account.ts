import { isFitted } from "../../records/hasReached.ts";
import { printMoney } from "../../units/money.ts";
import type { Page } from "../page.ts";
import type { ProjectData } from "../projectData.ts";
import { currencySign } from "../words/bareMoney.ts";
import { dateInWords } from "../words/dates.ts";
import { listed } from "../words/phrases.ts";
import { agreedPart } from "./accountAgreed.ts";
import { madePart } from "./accountLines.ts";
import { reserveLead, reservePart } from "./accountReserve.ts";
import { duePart, paidPart } from "./accountRows.ts";
import { studioPage } from "./studioPage.ts";

/** What remains, before all else; then what of it is due, and what the total leaves out or holds for later. */
function leadWords(data: ProjectData): { readonly lead: string; readonly more: string } {
  const { account: a, studio } = data;
  const print = (sum: typeof a.total): string => printMoney(sum, studio.fields.language);
  const { remaining, total, dueNow, parts, priceToCome, unchosen, reserve } = a;
  const inCredit = { ...remaining, minor: -remaining.minor };
  const lead =
    a.pricesIn === "none"
      ? a.paid.minor === 0n
        ? "No price is in yet, so there is nothing to be paid."
        : `${print(a.paid)} is paid, and no price is in yet.`
      : remaining.minor < 0n
        ? `The client is ${print(inCredit)} in credit: ${print(a.paid)} is paid of ${print(total)}.`
        : remaining.minor > 0n
          ? a.paid.minor === 0n
            ? `${print(total)} is to be paid; nothing has come in yet.`
            : `${print(remaining)} remains to be paid of ${print(total)}.`
          : total.minor === 0n
            ? "There is nothing to be paid yet."
            : `All is paid: ${print(total)}.`;
  const due =
    remaining.minor <= 0n || parts.length === 0
      ? ""
      : dueNow.minor > 0n
        ? `${print(dueNow)} of it is due by now.`
        : "Nothing of it is due yet.";
  const more = [
    due,
    priceToCome.length > 0
      ? `The total is not the whole yet. Price to come: ${listed(priceToCome)}.`
      : "",
    unchosen.minor > 0n
      ? `${print(unchosen)} of the total is for what the client has still to choose, as it is drawn.`
      : "",
    reserveLead(reserve, print),
  ];
  return { lead, more: more.filter((words) => words !== "").join(" ") };
}

/** The account of a project: what was agreed, what is due when, what was paid and what remains, and what it is made of. For the studio alone. */
export function accountPage(data: ProjectData): Page {
  const { project, studio, account } = data;
  const { language } = studio.fields;
  const asOf = dateInWords(account.asOf, language);
  const title = isFitted(project) ? "Final account" : "Account";
  return studioPage(data, "account", {
    title,
    beside: asOf,
    to: ["orders", "findings", "schedule"],
    model: {
      title,
      client: project.fields.client.name,
      asOf,
      currency: currencySign(account.currency, language),
      ...leadWords(data),
      agreed: agreedPart(data),
      due: duePart(data),
      paid: paidPart(data),
      made: madePart(data),
      reserve: reservePart(data),
    },
  });
}
