import { clothText } from "../../quantities/text/clothText.ts";
import { lossWords } from "../../quantities/text/washWords.ts";
import { type Delivery, deliveriesOf, receiptLine } from "../../sourcing/deliveries.ts";
import { factsAsSold } from "../../swatches/clothFacts.ts";
import type { Length } from "../../units/length.ts";
import { printLength } from "../../units/printLength.ts";
import { spelled } from "../../units/spelling.ts";
import type { Page } from "../page.ts";
import type { ProjectData } from "../projectData.ts";
import { type Markup, marked } from "../words/marks.ts";
import { dividedWords } from "./dividedCloth.ts";
import { ordersWords } from "./orderedWords.ts";
import { boxesOf } from "./receivingBoxes.ts";
import { studioPage } from "./studioPage.ts";

/**
 * What is done with a bolt before it is cut. All of it is common practice, no source. The slip lies on a cutting table: no price and no
 * private note stands on it.
 */
const CAUTIONS = [
  {
    word: "Check before you cut.",
    text: "Cloth that was cut is not taken back. Unroll the whole length, face up, in good light, and look at all of it first.",
  },
  {
    word: "Keep the ticket.",
    text: "The lot is on it. Write it down here, and keep it until the work is fitted: what is ordered later must be of the same lot.",
  },
  {
    word: "Do not cut what does not match.",
    text: "Where the colour, face, width or repeat is another than the sample’s or the card’s, put it aside and ask the studio.",
  },
];

const HOW =
  "Length: along one selvedge, without pulling. Width: between the selvedges, where it is narrowest. Repeat: over as many repeats as the table holds, divided by their number. First motif: from the cut end up to the middle of the first motif of the column nearest the left selvedge. A flaw: from the outer end of the bolt, and from the left selvedge; further flaws, and further lengths where it comes in several, on the back.";

/** The receiving slip of a project: a block for each cloth that comes, to be filled in with a pencil: for the studio alone. */
export function receivingPage(data: ProjectData): Page {
  const { project, studio } = data;
  const { language } = studio.fields;
  const deliveries = deliveriesOf(data);
  return studioPage(data, "receiving", {
    to: ["orders", "schedule", "samples"],
    model: {
      deliver: project.fields.delivery ?? studio.fields.address ?? "",
      cautions: CAUTIONS.map(({ word, text }) => ({ word, text: spelled(text, language) })),
      how: HOW,
      blocks: deliveries.map((delivery) => blockOf(data, delivery, deliveries)),
    },
  });
}

/** How what comes once for several makers is divided, said in full at the first of them. */
function dividedOf(data: ProjectData, delivery: Delivery, all: readonly Delivery[]): string {
  const { need } = delivery;
  const divided = need.planned && !need.clientsOwn ? dividedWords(data, need.cloth) : "";
  if (divided === "") return "";
  const first = all.find((d) => d.need.cloth === need.cloth && !d.need.clientsOwn);
  return first === delivery ? `Divide ${divided}` : "Its part of the same order";
}

function blockOf(data: ProjectData, delivery: Delivery, all: readonly Delivery[]) {
  const { studio } = data;
  const { need, card, supplier } = delivery;
  const isAll = delivery.arrived?.isAll === true;
  return {
    name: card.fields.cloth,
    amount: marked(amountOf(data, delivery)),
    maker: need.maker === null ? "" : (studio.fields.makers?.[need.maker]?.name ?? need.maker),
    from: supplier === null ? "" : (studio.fields.suppliers?.[supplier]?.name ?? supplier),
    reference: need.clientsOwn ? "" : (card.fields.reference ?? ""),
    ordered: marked(
      need.clientsOwn
        ? "The client’s own"
        : ordersWords(data, card.id) || (isAll ? "" : "Not ordered yet"),
    ),
    divided: marked(dividedOf(data, delivery, all)),
    says: cardWords(data, delivery),
    wash: marked(washWords(delivery)),
    rows: boxesOf(data, delivery),
    paste: isAll ? "" : receiptLine(delivery),
    isAll,
  };
}

function amountOf(data: ProjectData, { need }: Delivery): string {
  if (need.planned) return need.planned.buy.text;
  if (!need.rolls) return clothText(need.length, data.studio.fields.units);
  const count = need.rolls.valueOf();
  return `${count} roll${count === 1 ? "" : "s"}`;
}

/** What is done with a cloth that is washed before it is cut, until it was; empty of any other. */
function washWords({ need, arrived }: Delivery): string {
  const washing = need.planned?.facts.washing;
  if (!washing || arrived?.receipts.every(({ washed }) => washed)) return "";
  return `To be washed before it is cut: measure it and look for flaws as it comes, wash the whole length, press it, and measure everything again (to be expected: less ${lossWords(washing)}). Then put the new measures in its receipt and add washed: and the day`;
}

/** What the card says that is measured against: width, repeat and match, where the first motif stands, and how it runs. */
function cardWords(data: ProjectData, { need, card }: Delivery): Markup {
  const { units } = data.studio.fields;
  const size = (length: Length): string => printLength(length, units);
  const { width, nap, runs, roll } = card.fields;
  // The plan's width is the one that came, once it was measured: it is no word of the card.
  const usable = width ?? roll?.width;
  // The card's, else the photograph's where that is sure enough, as on the makers' sheets; unwashed, since so it comes.
  const { repeat } = factsAsSold(card, data.swatches.get(card.id) ?? null);
  const match = { straight: "straight match", "half-drop": "half-drop", free: "" };
  const selvedge = card.fields.repeat?.["from-selvedge"];
  const isStripe = data.swatches.get(card.id)?.kind === "stripe";
  const across = repeat?.across ? size(repeat.across) : "";
  const words = [
    usable ? `${size(usable)} wide` : "",
    repeat && !isStripe ? `repeat ${size(repeat.up)}${across ? ` × ${across} across` : ""}` : "",
    repeat && isStripe && across ? `repeat ${across} across` : "",
    repeat && !isStripe ? match[repeat.match] : "",
    selvedge ? `first motif ${size(selvedge)} from the left` : "",
    need.planned?.facts.repeatUnknown ? "its repeat is not known: measure it" : "",
    nap ? "pile, one way" : runs === "one-way" ? "one way" : "",
  ];
  return marked(words.filter((w) => w !== "").join(", "));
}
