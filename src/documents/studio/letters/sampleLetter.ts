import { hasReached } from "../../../records/hasReached.ts";
import { isSampled } from "../../../sourcing/leadTimes.ts";
import { sampleStateIn } from "../../../sourcing/samples.ts";
import { printMoney } from "../../../units/money.ts";
import type { Page } from "../../page.ts";
import { sampleLetterPath } from "../../paths.ts";
import type { ProjectData } from "../../projectData.ts";
import { marked } from "../../words/marks.ts";
import { feeOf, trayCards } from "../sampleRows.ts";
import { supplierLetter } from "./supplierLetter.ts";

type Suppliers = NonNullable<ProjectData["studio"]["fields"]["suppliers"]>;

/** What is still to be asked for of one supplier. */
export interface SampleAsk {
  /** The supplier's key in studio.md. */
  readonly key: string;
  readonly supplier: Suppliers[string];
  readonly cards: ReturnType<typeof trayCards>;
}

/** The suppliers whom the studio has still to ask for samples, by their names; none once it is being made. */
export function samplesBySupplier(data: ProjectData): SampleAsk[] {
  if (hasReached(data.project, "making")) return [];
  const wanted = trayCards(data).filter(
    (card) => isSampled(card) && sampleStateIn(data.project, card) === "to-ask-for",
  );
  return Object.entries(data.studio.fields.suppliers ?? {})
    .map(([key, supplier]) => ({
      key,
      supplier,
      cards: wanted.filter((card) => card.fields.supplier === key),
    }))
    .filter(({ cards }) => cards.length > 0)
    .sort((a, b) => a.supplier.name.localeCompare(b.supplier.name));
}

/** A letter for each of them: which samples, for what fee, and what the studio wants to know of each. */
export function sampleLetters(data: ProjectData): Page[] {
  const { language, address, units } = data.studio.fields;
  const least = units === "inches" ? "8″" : "20\u00a0cm";
  return samplesBySupplier(data).map(({ key, supplier, cards }) =>
    supplierLetter(data, {
      path: sampleLetterPath(data.project.id, key),
      title: "Samples",
      supplier,
      early: "Once it is sent write ordered: and the day under sample on each card.",
      rows: cards.map((card) => {
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
