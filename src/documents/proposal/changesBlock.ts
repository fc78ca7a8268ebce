import { pricesIn } from "../../money/pricesIn.ts";
import { type ChangedItem, type Changes, isRoundingAlone } from "../../revisions/changes.ts";
import type { SentItem, SentRevision } from "../../revisions/sentRevision.ts";
import { within } from "../../units/capital.ts";
import { money } from "../../units/money.ts";
import type { ProjectData } from "../projectData.ts";
import { bareMoney, currencySign } from "../words/bareMoney.ts";
import { changeWords, inCloths } from "../words/changeWords.ts";
import { dateInWords } from "../words/dates.ts";
import { type Markup, marked } from "../words/marks.ts";
import type { Language } from "../words/phrases.ts";
import { starred, TO_COME } from "../words/stars.ts";

/** One thing that is another than it was. */
export interface ChangeRow {
  readonly what: string;
  readonly how: Markup;
  readonly before: string;
  readonly now: string;
}

/** What has changed since the last proposal that was sent, as its client reads it. */
export interface ChangesBlock {
  readonly head: string;
  readonly sentence: string;
  readonly currency: string;
  readonly rows: readonly ChangeRow[];
  readonly before: string;
  readonly now: string;
}

/** More than so many ways in which a thing is made otherwise are not told a client one by one. */
const MOST_WAYS = 3;

/** What stands where there is no sum. */
const NONE = "\u2013";

/** The block of what has changed; null where no other revision was sent before. */
export function changesBlock(data: ProjectData): ChangesBlock | null {
  const { changes, studio } = data;
  if (!changes) return null;
  const { language } = studio.fields;
  const { since } = changes;
  const sum = (minor: number): string => bareMoney(money(minor, since.currency), language);
  const price = (item: SentItem): string =>
    item.open && item.sumMinor === 0 ? TO_COME : starred(sum(item.sumMinor), item.open);
  const total = ({ items, others, totalMinor }: SentRevision): string => {
    const known = pricesIn([...items, ...others], [money(totalMinor, since.currency)]);
    return known === "none" ? TO_COME : starred(sum(totalMinor), known === "some");
  };
  const rooms = new Set([...data.state.items, ...since.items].map(({ room }) => room));
  const named = ({ what, roomName }: SentItem): string =>
    rooms.size > 1 ? `${what}; ${within(roomName)}` : what;
  const listedChanges = changes.changed.filter((each) => !isRoundingAlone(each));
  const rows: ChangeRow[] = [
    ...changes.added.map((item) => ({
      what: named(item),
      how: marked(["new", inCloths(item)].filter((w) => w !== "").join(", ")),
      before: NONE,
      now: price(item),
    })),
    ...listedChanges.map((each) => ({
      what: named(each.now),
      how: marked(howWords(each, language)),
      before: price(each.before),
      now: price(each.now),
    })),
    ...changes.removed.map((item) => ({
      what: named(item),
      how: marked("no longer in it"),
      before: price(item),
      now: NONE,
    })),
    ...changes.others.map(({ what, beforeMinor, nowMinor }) => ({
      what,
      how: marked(beforeMinor === 0 ? "new" : nowMinor === 0 ? "no longer in it" : ""),
      before: beforeMinor === 0 ? NONE : sum(beforeMinor),
      now: nowMinor === 0 ? NONE : sum(nowMinor),
    })),
  ];
  return {
    head: `What has changed since revision ${since.revision}`,
    sentence: sentence(changes, dateInWords(since.sent, language), rows.length, language),
    currency: currencySign(since.currency, language),
    rows,
    before: total(since),
    now: total(data.state),
  };
}

function sentence(changes: Changes, date: string, rows: number, language: Language): string {
  const sent = `Revision ${changes.since.revision} was sent on ${date}.`;
  if (rows === 0) return `${sent} Nothing in it has changed.`;
  const rounded = changes.changed.some(isRoundingAlone)
    ? ", but for the last figure of a sum, which moves with the tax of all"
    : "";
  const priceAlone = changes.changed.some(
    (each) => howWords(each, language) === "" && !isRoundingAlone(each),
  )
    ? " Where nothing stands under How, the price alone is another: cloth is bought for all things together, so that what one takes can change with another."
    : "";
  return `${sent} What is not listed here is as it was${rounded}.${priceAlone}`;
}

/** `in Vestry, before in Pomander; now priced`; empty where the price alone is another. */
function howWords(changed: ChangedItem, language: Language): string {
  const priced = changed.before.open && !changed.now.open ? ["now priced"] : [];
  return [...changeWords(changed, language, MOST_WAYS), ...priced].join("; ");
}
