import { hasReached } from "../../../records/hasReached.ts";
import type { ClothRecord } from "../../../records/records.ts";
import { isSampled } from "../../../sourcing/leadTimes.ts";
import { sampleStateIn } from "../../../sourcing/samples.ts";
import { printMoney } from "../../../units/money.ts";
import type { Page } from "../../page.ts";
import { sampleLetterPath } from "../../paths.ts";
import type { ProjectData } from "../../projectData.ts";
import { marked } from "../../words/marks.ts";
import { feeOf, trayCards } from "../sampleRows.ts";
import { type Asked, bySupplier } from "./bySupplier.ts";
import { supplierLetter } from "./supplierLetter.ts";

/** The suppliers whom the studio has still to ask for samples, with their cards; none once it is being made. */
export function samplesBySupplier(data: ProjectData): Asked<ClothRecord>[] {
  if (hasReached(data.project, "making")) return [];
  const wanted = trayCards(data).filter(
    (card) => isSampled(card) && sampleStateIn(data.project, card) === "to-ask-for",
  );
  return bySupplier(
    data,
    wanted.map((card) => ({ supplier: card.fields.supplier, line: card })),
  );
}

/** A letter for each of them: which samples, for what fee, and what the studio wants to know of each. */
export function sampleLetters(data: ProjectData): Page[] {
  const { language, address, units } = data.studio.fields;
  const least = units === "inches" ? "8″" : "20\u00a0cm";
  return samplesBySupplier(data).map(({ key, supplier, lines }) =>
    supplierLetter(data, {
      path: sampleLetterPath(data.project.id, key),
      title: "Samples",
      supplier,
      early: "Once it is sent write ordered: and the day under sample on each card.",
      rows: lines.map((card) => {
        const fee = feeOf(data, card);
        const credited = card.fields.sample?.credited ? "with the order" : "";
        return {
          reference: card.fields.reference ?? "",
          name: marked(card.fields.cloth),
          isCloth: true,
          amount: marked("1 cutting"),
          price: fee ? credited : "",
          sum: fee ? printMoney(fee, language) : "",
          note: "",
        };
      }),
      heads: ["Credited", "Fee"],
      goods: "",
      wishes: [
        `One cutting of each, as large as its repeat where that can be, and ${least} square at least.`,
        "Please tell us of each its price, its width and repeat, how much of it there is in one lot, and how long it takes to come.",
      ],
      deliver: address ?? "",
      isSigned: false,
    }),
  );
}
